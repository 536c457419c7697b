import type { Point } from '@tinwright/core';
import { polygonArea, radians } from '@tinwright/core/internal';
import type { BendStep, Press } from '@tinwright/shop';
import { FLATTENING_BAR, TOOL_DEPTH } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool } from './tool.js';

const LIFTED = 12; // mm the punch is drawn over the sheet before the stroke
const GAUGE_DEEP = 14; // mm of a finger of the gauge that are drawn: its front
const ARC = 8; // straight pieces of a rounded tip

/**
 * What is bent on a press brake, mm: height of a hem over the sheet before and after it is closed, and how far back
 * its metal reaches beside the gauge.
 */
export interface PressSheet {
  readonly thickness: number;
  readonly insideRadius: number;
  readonly hem: readonly [before: number, after: number];
  readonly rear: number;
}

/** A press brake: the punch comes down, both sides of the sheet rise, the die's shoulders keep under them. */
export function pressMachine(press: Press, step: BendStep, sheet: PressSheet): Machine {
  return step.action === 'close' ? flattening(sheet) : bending(press, step, sheet);
}

function bending(press: Press, step: BendStep, { thickness, insideRadius, rear }: PressSheet): Machine {
  const punch = press.punches.find((p) => p.name === step.press?.punch);
  const die = press.dies.find((d) => d.name === step.press?.die);
  const at = (half: number, lifted: number): readonly Tool[] => {
    const { outline, centre } = rounded(punch?.section ?? [], punch?.radius ?? 0);
    const r = centre === 0 ? 0 : (punch?.radius ?? 0);
    // the tip touches the bottom of the bend, or both its sides where the bend is sharper than the tip
    const seat = r <= insideRadius ? insideRadius / Math.cos(half) - insideRadius + r : r / Math.cos(half);
    const up = seat - centre + lifted;
    const { half: wide, height } = press.ram;
    const { half: bed } = press.bed;
    const foot = Math.min(0, ...(die?.section ?? []).map((p) => p[1]));
    const shoulder = ((die?.opening ?? 0) / 2) * Math.tan(half) - thickness / Math.cos(half);
    return [
      { name: 'ram', outline: rectangle(-wide, height + up, wide, height + up + TOOL_DEPTH), mounted: false },
      { name: 'punch', outline: raised(outline, up), mounted: true },
      {
        name: 'die',
        outline: raised(counter(die?.section ?? []), shoulder),
        mounted: die?.sectioned === true,
      },
      {
        name: 'table',
        outline: rectangle(-bed, foot + shoulder - TOOL_DEPTH, bed, foot + shoulder),
        mounted: false,
      },
    ];
  };
  // a stop touches what stands furthest back
  const asked = step.press?.gauge ?? null;
  const gauge = asked === null ? null : Math.max(asked, rear);
  const { over, under } = press.backGauge.finger;
  const behind = Math.min(...(die?.section ?? []).map((p) => p[0]));
  // nearer than the die is wide it lies on the die
  const low = gauge !== null && -gauge > behind ? 0 : under;
  const stop: readonly Tool[] =
    gauge === null
      ? []
      : [
          {
            name: 'gauge',
            outline: rectangle(-gauge - GAUGE_DEEP, -thickness - low, -gauge, over - thickness),
            mounted: false,
          },
        ];
  return { before: [...at(0, LIFTED), ...stop], after: at(radians(step.angle) / 2, 0) };
}

/** Flat bars that close a hem. */
function flattening({ thickness, hem: [open, closed] }: PressSheet): Machine {
  const at = (under: number): readonly Tool[] => [
    {
      name: 'bar',
      outline: rectangle(-FLATTENING_BAR, under, FLATTENING_BAR, under + TOOL_DEPTH),
      mounted: true,
    },
    {
      name: 'table',
      outline: rectangle(-FLATTENING_BAR, -thickness - TOOL_DEPTH, FLATTENING_BAR, -thickness),
      mounted: false,
    },
  ];
  return { before: at(open + LIFTED), after: at(closed) };
}

const raised = (outline: readonly Point[], up: number) => outline.map(([x, z]): Point => [x, z + up]);
const counter = (outline: readonly Point[]) => (polygonArea(outline) < 0 ? outline.toReversed() : outline);

/** A punch's section with its tip rounded, and how high the centre of the rounding lies; 0 where it stays sharp. */
function rounded(
  section: readonly Point[],
  radius: number,
): { readonly outline: readonly Point[]; readonly centre: number } {
  const outline = counter(section);
  const tip = outline.findIndex(([x, z]) => Math.hypot(x, z) < 1e-9);
  const [a, b] = [outline.at(tip - 1), outline[(tip + 1) % outline.length]];
  if (tip < 0 || a === undefined || b === undefined || radius === 0) return { outline, centre: 0 };
  const [from, to] = [Math.atan2(a[1], a[0]), Math.atan2(b[1], b[0])];
  const half = Math.abs(from - to) / 2;
  const away = radius / Math.tan(half);
  const middle = (from + to) / 2;
  if (away > Math.min(Math.hypot(...a), Math.hypot(...b)) || Math.abs(middle - Math.PI / 2) > 1e-6)
    return { outline, centre: 0 };
  const centre = radius / Math.sin(half);
  const arc = Array.from({ length: ARC + 1 }, (_, i): Point => {
    const turn = -Math.PI / 2 + (Math.PI / 2 - half) * ((2 * i) / ARC - 1);
    return [radius * Math.cos(turn), centre + radius * Math.sin(turn)];
  });
  return { outline: [...outline.slice(0, tip), ...arc, ...outline.slice(tip + 1)], centre };
}
