import { frozen } from '@tinwright/core/internal';

/** Layers of a cut file. */
export type CutLayerName = 'CUT' | 'BEND-UP' | 'BEND-DOWN' | 'WELD-MARK' | 'SCRIBE' | 'LEAD' | 'NOTE';

/** Layers of a picture. */
export type PictureLayerName = 'EDGE' | 'BEND' | 'MARK' | 'DIMENSION' | 'LEADER' | 'LABEL';

/** Any layer of ours. */
export type LayerName = CutLayerName | PictureLayerName;

/** A layer of one's own: up to 31 letters, digits, `_`, `$` and `-`, which every reader takes. */
export type OwnLayerName = string & {};

/** What of a layer's look is other than ours; what a layer of one's own leaves out is black and narrow. */
export type LayerPaint = Partial<Pick<LayerStyle, 'colour' | 'number' | 'width'>>;

/** Looks of layers by their names, ours or one's own. */
export type LayerPaints = Readonly<Record<string, LayerPaint>>;

/** How a layer looks. */
export interface LayerStyle<Name extends LayerName | OwnLayerName = LayerName | OwnLayerName> {
  readonly name: Name;
  /** What is on it, for legends and help. */
  readonly holds: string;
  /** Okabe–Ito palette (Color Universal Design, 2008): apart for colour-blind readers too. */
  readonly colour: string;
  /** Colour number in DXF; only has to be stable and distinct. */
  readonly number: number;
  /** Line width in SVG, mm: wide for outlines, narrow for bend lines (ISO 128). */
  readonly width: number;
}

/** Every layer of a cut file, in the order of drawing: what is only marked stands before what is cut. */
export const LAYERS: readonly LayerStyle<CutLayerName>[] = frozen([
  {
    name: 'BEND-UP',
    holds: 'bend lines towards the marked face',
    colour: '#0072B2',
    number: 152,
    width: 0.18,
  },
  {
    name: 'BEND-DOWN',
    holds: 'bend lines away from the marked face',
    colour: '#D55E00',
    number: 32,
    width: 0.18,
  },
  { name: 'WELD-MARK', holds: 'where fasteners go', colour: '#009E73', number: 106, width: 0.18 },
  { name: 'SCRIBE', holds: 'lines to scribe only', colour: '#56B4E9', number: 141, width: 0.18 },
  { name: 'LEAD', holds: 'lead-ins and lead-outs of cuts', colour: '#E69F00', number: 40, width: 0.18 },
  { name: 'CUT', holds: 'outlines and holes to cut', colour: '#000000', number: 7, width: 0.35 },
  { name: 'NOTE', holds: 'text', colour: '#CC79A7', number: 223, width: 0.18 },
]);

/** Layers of pictures: made for reading, so dark and thin. */
const PICTURE_LAYERS: readonly LayerStyle<PictureLayerName>[] = [
  { name: 'EDGE', holds: 'visible edges', colour: '#000000', number: 7, width: 0.3 },
  { name: 'BEND', holds: 'middle lines of bends', colour: '#000000', number: 7, width: 0.13 },
  { name: 'MARK', holds: 'fasteners', colour: '#009E73', number: 106, width: 0.18 },
  { name: 'DIMENSION', holds: 'dimension lines', colour: '#0072B2', number: 152, width: 0.13 },
  { name: 'LEADER', holds: 'lines from letters to parts', colour: '#0072B2', number: 152, width: 0.13 },
  { name: 'LABEL', holds: 'names of sizes', colour: '#0072B2', number: 152, width: 0.13 },
];

/** How a layer looks, ours or one's own. */
export function layerStyle(name: string, paints: LayerPaints = {}): LayerStyle {
  const ours: LayerStyle | undefined = [...LAYERS, ...PICTURE_LAYERS].find((l) => l.name === name);
  return { ...(ours ?? { name, holds: '', colour: '#000000', number: 7, width: 0.18 }), ...paints[name] };
}
