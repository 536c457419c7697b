// What is used of svg-parser, which brings no types.
declare module 'svg-parser' {
  export interface ElementNode {
    readonly type: 'element';
    readonly tagName?: string;
    readonly properties?: Readonly<Record<string, string | number>>;
    readonly children: readonly (ElementNode | { readonly type: 'text' } | string)[];
  }
  export interface RootNode {
    readonly type: 'root';
    readonly children: readonly (ElementNode | { readonly type: 'text' })[];
  }
  export function parse(text: string): RootNode;
}
