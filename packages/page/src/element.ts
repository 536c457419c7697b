/// <reference lib="dom" />
import type { PageContent } from './content.js';
import { pageFile } from './page-file.js';

/**
 * Let other sites place the page in theirs: defines `<tinwright-page>`, which shows the job that stands in it as text
 * (in a `<script type="application/yaml">`), in a frame of its own that reaches nothing of the site. Its attributes:
 * `lang`, the language it starts in, `de` or English; `locked`, places of values that stay, with spaces between;
 * `worksheet`, where numbers are left to be found.
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
          locked: (this.getAttribute('locked') ?? '').split(/\s+/).filter((l) => l !== ''),
          worksheet: this.hasAttribute('worksheet'),
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
