// The only door of @tinwright/cutting. Names, no `export *`.
export { type Blank, pieceId, sameMetal } from './stock/blank.js';
export { type Grain, NO_TRIM, type Rack, type StockSheet, type Trim } from './stock/sheet.js';
export { turnsAllowed } from './stock/turns.js';
