// What pdfkit's types leave out.
/** Adobe's published metrics of a standard font. */
declare module 'pdfkit/standard-fonts/*' {
  const data: {
    readonly name: string;
    readonly capHeight: number;
    readonly glyphNames: string;
    readonly glyphWidths: readonly number[];
    /** An amount, then the differences of the pairs' numbers it holds for, and so on. */
    readonly kernPairs: readonly (number | readonly number[])[];
  };
  export default data;
}

declare module 'pdfkit/output' {
  export function toBytes(document: PDFKit.PDFDocument): Promise<Uint8Array<ArrayBuffer>>;
}
