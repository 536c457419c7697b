import { PROGRAM } from '@tinwright/core';
import { coordinate, escapeXml } from '@tinwright/files/internal';
import type { Page } from '../page/page.js';
import { pageElement } from '../svg/page.js';

/** What a document says of itself. */
export interface HtmlInfo {
  readonly title: string;
  /** Tag of the language (BCP 47). */
  readonly language: string;
  /** Name of the list of links at its top, for those who cannot see it. */
  readonly contents: string;
}

/**
 * Pages as one HTML file without script: each an SVG at true size, a link to each that can be led to, sheets of their
 * own sizes when it is printed.
 * @param pages asked for one by one
 */
export function pagesHtml(pages: Iterable<Page>, { title, language, contents }: HtmlInfo): string {
  const sizes = new Set<string>();
  const links: Link[] = [];
  const sections: string[] = [];
  for (const page of pages) {
    sizes.add(sizeName(page));
    links.push(...(page.anchors ?? []));
    sections.push(sectionOf(page, language));
  }
  const style = [
    'body{margin:0;background:#fff;color:#000;font-family:Helvetica,Arial,sans-serif}',
    'nav{padding:1em}nav li{margin:.2em 0}',
    'section{margin:0 auto 6mm;break-after:page;break-inside:avoid}section:last-child{break-after:auto}',
    'svg{display:block;max-width:100%;height:auto;margin:0 auto}',
    'a{color:#000}',
    '@media screen{body{background:#ddd}section svg{box-shadow:0 0 2mm #888}}',
    '@media print{nav{display:none}section{margin:0}svg{max-width:none}}',
    '@page{margin:0}',
    ...[...sizes].map((name) => {
      const [w, h] = name.slice(1).replaceAll('_', '.').split('x');
      return `@page ${name}{size:${w}mm ${h}mm;margin:0}.${name}{page:${name}}`;
    }),
  ].join('\n');
  return `<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="generator" content="${PROGRAM.mark}">
<meta name="viewport" content="width=device-width">
<title>${escapeXml(title)}</title>
<style>
${style}
</style>
</head>
<body>
<nav aria-label="${escapeXml(contents)}">
${listOf(links)}
</nav>
<main>
${sections.join('\n')}
</main>
</body>
</html>
`;
}

const sizeName = ({ width, height }: Page): string =>
  `p${coordinate(width)}x${coordinate(height)}`.replaceAll('.', '_');

function sectionOf(page: Page, language: string): string {
  const targets = (page.anchors ?? []).map(({ name }) => `<a id="${escapeXml(name)}"></a>`).join('');
  return `<section class="${sizeName(page)}">${targets}\n${pageElement(page, language)}\n</section>`;
}

type Link = NonNullable<Page['anchors']>[number];

function listOf(links: readonly Link[]): string {
  const items = links.map(
    ({ name, title, level }) =>
      `<li${level === 0 ? '' : ' style="margin-left:2em"'}><a href="#${escapeXml(name)}">${escapeXml(title)}</a></li>`,
  );
  return `<ul>\n${items.join('\n')}\n</ul>`;
}
