import type { Point } from '@tinwright/core';
import type { FastenerTool, KnownFastener } from '@tinwright/core/family';
import { frozen } from '@tinwright/core/internal';
import type { BendStep, BendStroke } from '../sequence/answer/plan.js';

/** What is used for an operation; words for it are the writer's. */
export type ToolName =
  | FastenerTool
  | 'rule'
  | 'square'
  | 'scriber'
  | 'pencil'
  | 'centre-punch'
  | 'shear'
  | 'snips'
  | 'brake'
  | 'press'
  | 'vise'
  | 'protractor'
  | 'caliper'
  | 'clamps';

/** Why something is done so, or then; words for it are the writer's. */
export type ReasonName =
  | 'metal-differs'
  | 'all-from-edges'
  | 'burrs-lift'
  | 'each-from-datum'
  | 'scratch-cracks'
  | 'flat-while-it-can'
  | 'walls-block-drill'
  | 'match-drill'
  | 'hems-before-walls'
  | 'inner-before-outer'
  | 'short-before-long'
  | 'found-order'
  | 'correct-while-open'
  | 'bends-vary'
  | 'play-small'
  | 'seat-square'
  | 'spring-in'
  | 'first-can-be-undone'
  | 'middle-outwards'
  | 'holds-by-others'
  | 'hands-and-cloth'
  | 'measured-is-known';

/** Holes of one kind in a part. Diameter mm */
export interface HoleWork {
  readonly diameter: number;
  readonly count: number;
  /** Kind of the fastener that goes through; null for a hole by itself. */
  readonly purpose: string | null;
  /** True when only the middle hole of each row is drilled now, the others through the other part. */
  readonly firstOnly: boolean;
}

/** One stroke of bending in its place. */
export interface BendWork extends BendStroke {
  /** Bent through when it is done, degrees; null where a hem is folded as far as it goes. */
  readonly angle: number | null;
  /** How a machine does it; null where no order was found for one. */
  readonly step: BendStep | null;
  /** Its place among the steps of the part, from 0. */
  readonly index: number;
}

/** Two pieces that are put together. */
export interface JointWork {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly fasteners: number;
  /** Clearance asked, mm. */
  readonly clearance: number;
}

/** What is done to a part. Lengths mm. */
export type OnPart =
  | { readonly kind: 'shear'; readonly quantity: number; readonly size: Point }
  | { readonly kind: 'deburr' }
  | { readonly kind: 'mark' }
  | {
      readonly kind: 'cut-out';
      /** Openings that no drill makes. */
      readonly openings: number;
    }
  | { readonly kind: 'drill'; readonly holes: readonly HoleWork[] }
  | { readonly kind: 'bend'; readonly bend: BendWork }
  | {
      /** Flaps of louvres bent out by hand, cut free already. */
      readonly kind: 'form';
      readonly flaps: number;
      readonly side: 'up' | 'down';
      /** How far their free edges stand off. */
      readonly height: number;
      /** Bent through, degrees. */
      readonly angle: number;
    }
  | { readonly kind: 'check' }
  | {
      readonly kind: 'measure';
      /** What is measured: a size of a part by its path, or the distance between two pieces. */
      readonly size: string | null;
      /** The size of the waiting part that follows it, by its path; null where it has no name. */
      readonly own: string | null;
      readonly between: readonly [string, string] | null;
      readonly planned: number;
      /** How much smaller the size that follows is, below 0 where it is larger; null where nobody says. */
      readonly play: number | null;
    };

/** What is done to the object, or before there is a part. */
export type OnObject =
  | { readonly kind: 'trial-bend' }
  | { readonly kind: 'trial-joint'; readonly fastener: KnownFastener }
  | { readonly kind: 'place'; readonly fastener: KnownFastener | null; readonly joints: readonly JointWork[] }
  | { readonly kind: 'fasten-first'; readonly fastener: KnownFastener; readonly joints: readonly JointWork[] }
  | { readonly kind: 'fasten-rest'; readonly fastener: KnownFastener; readonly joints: readonly JointWork[] }
  | {
      readonly kind: 'fit';
      /** Bought parts of one row: what they are, and how many. */
      readonly name: string;
      readonly type: string;
      readonly count: number;
      readonly pieces: readonly string[];
      /** What goes through their holes; null where the job does not say. */
      readonly fastener: KnownFastener | null;
      /** Degrees it opens by; null where nothing turns. */
      readonly opens: number | null;
    }
  | { readonly kind: 'finish' }
  | { readonly kind: 'inspect' };

/** An operation of a job: what is done to which part, by its name, or to the object; with what, and why. */
export type Operation = ((OnPart & { readonly part: string }) | (OnObject & { readonly part: null })) & {
  readonly tools: readonly ToolName[];
  readonly reasons: readonly ReasonName[];
};

/** Where the order of a part's bends comes from. */
export type BendOrder = 'found' | 'usual';

/** Everything to do for a job, in order. */
export interface Operations {
  readonly list: readonly Operation[];
  readonly orders: Readonly<Record<string, BendOrder>>;
}

/** All tools, in the order they are laid out. */
export const TOOLS: readonly ToolName[] = frozen([
  'gloves',
  'eyes',
  'rule',
  'square',
  'scriber',
  'pencil',
  'centre-punch',
  'hammer',
  'shear',
  'snips',
  'file',
  'drill',
  'brake',
  'press',
  'vise',
  'mallet',
  'protractor',
  'caliper',
  'clamps',
  'spot-welder',
  'welder',
  'rivet-gun',
  'pliers',
  'screwdriver',
]);

/** The tools of some operations, each once. */
export const toolsOf = (list: readonly Operation[]): readonly ToolName[] =>
  TOOLS.filter((t) => list.some((o) => o.tools.includes(t)));
