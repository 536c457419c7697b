import type { PieceName } from '@tinwright/cutting';
import type { ShearWords } from '@tinwright/words/internal';

/** What a piece is called between cuts and in the end; sheets are counted through all plans from `first`. */
export function pieceText(piece: PieceName, first: number, words: ShearWords): string {
  switch (piece.kind) {
    case 'blank':
      return piece.id;
    case 'sheet':
      return words.sheet(first + piece.sheet);
    case 'strip':
      return words.strip(first + piece.sheet, piece.letter);
    case 'offcut':
      return words.offcut(first + piece.sheet, piece.number);
    case 'scrap':
      return words.scrap;
  }
}
