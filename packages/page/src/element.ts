/// <reference lib="dom" />
import type { PageContent } from './content.js';
import { pageFile } from './page-file.js';

/**
 * Let other sites place the page in theirs: defines `<tinwright-page>`, which shows the job that stands in it as text
 * (in a `<script type="application/yaml">`), in a frame of its own that reaches nothing of the site. `lang` is the
 * language it starts in.
 * @param template the package's `page.html`
 */
export function definePageElement(template: string, name = 'tinwright-page'): void {
  customElements.define(
    name,
    class extends HTMLElement {
      connectedCallback(): void {
        const content: PageContent = {
          text: this.querySelector('script')?.textContent ?? '',
          language: this.lang === 'de' ? 'de' : 'en',
          locked: [],
          worksheet: false,
        };
        const frame = document.createElement('iframe');
        frame.title = this.title || 'Tinwright';
        frame.sandbox.add('allow-scripts', 'allow-downloads');
        Object.assign(frame.style, { width: '100%', height: '100%', border: '0' });
        frame.srcdoc = pageFile(template, content);
        this.replaceChildren(frame);
      }
    },
  );
}
