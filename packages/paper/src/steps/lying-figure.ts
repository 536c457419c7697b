import type { Box, FormedPanel, Point, Vec3 } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import type { Surface } from '@tinwright/files/internal';
import {
  bendSurface,
  ISOMETRIC,
  join,
  panelSurface,
  see,
  visibleBehind,
  visibleLines,
} from '@tinwright/files/internal';
import { inLines, type Label } from '../figure/labels.js';
import { roomIn } from '../figure/room.js';
import { boxOfItems } from '../page/box.js';
import { type Item, moved, type Pen } from '../page/page.js';
import { hatching, OFF } from './hatch.js';
import { type FigureSetting, labelled } from './labelled.js';
import { type DrawnSurface, stopDrawn, toolsDrawn } from './lying-tools.js';
import { moves, type Scene } from './scene.js';

const HATCH = 2.6; // mm on the page between the lines of a hatch
const LEAST_HOLE = 0.8; // mm on the page
const MARGIN = 0.12; // of the box, left round the part for labels

/** The part as it lies in the machine before the stroke, in an isometric view from the operator's right. */
export function lyingFigure(scene: Scene, box: Box, setting: FigureSetting): readonly Item[] {
  const tools = toolsDrawn(scene);
  const plain = [...partDrawn(scene, 0), ...tools];
  const size = extentOf(plain);
  const room: Point = [box.max[0] - box.min[0], box.max[1] - box.min[1]];
  const [w, h] = [size.max[0] - size.min[0], size.max[1] - size.min[1]];
  const ratio = Math.min(((1 - 2 * MARGIN) * room[0]) / w, ((1 - MARGIN) * room[1]) / h);
  const at: Point = [
    box.min[0] + room[0] / 2 - (ratio * (size.min[0] + size.max[0])) / 2,
    box.min[1] + room[1] / 2 - (ratio * (size.min[1] + size.max[1])) / 2,
  ];
  const items = moved(linesOf([...partDrawn(scene, ratio), ...tools], ratio), at);
  const free = roomIn(box);
  free.add(items);
  const on = (v: Vec3): Point => {
    const [x, y] = see(ISOMETRIC, v).at;
    return [at[0] + ratio * x, at[1] + ratio * y];
  };
  const { facets } = join(plain.map((g) => g.surface));
  return [...items, ...labelled(labelsOf(scene, facets, on, setting), free, setting)];
}

/** Panels and bends, thick where they turn; `ratio` 0 leaves hatching out. */
function partDrawn(scene: Scene, ratio: number): readonly DrawnSurface[] {
  const { before } = scene.state;
  const panels = before.panels.map((p) => ({
    ...p,
    holes: p.holes.filter((h) => ratio === 0 || h.diameter * ratio >= LEAST_HOLE),
  }));
  const standing = { ...before, panels };
  return [
    ...panels.flatMap((p): readonly DrawnSurface[] => {
      const surface = panelSurface(standing, p);
      const pen: Pen = moves(scene, 'panel', p.id) ? 'bold' : 'wide';
      const own: DrawnSurface = { pen, surface, kinds: ['edge'] };
      if (!scene.drawn.gripped.includes(p.id) || ratio === 0) return [own];
      const hatch = { facets: [], lines: hatching(p, before.thickness, HATCH / ratio) };
      return [own, { pen: 'faint', surface: hatch, kinds: ['mark'] }];
    }),
    ...before.bends.flatMap((b): readonly DrawnSurface[] => {
      const surface = bendSurface(b, ISOMETRIC);
      const own = scene.step.bends.includes(b.id);
      const thick = moves(scene, 'bend', b.id);
      return [
        { pen: thick ? 'bold' : 'wide', surface, kinds: ['edge'] },
        { pen: own ? 'narrow' : 'faint', surface: { facets: [], lines: surface.lines }, kinds: ['bend'] },
      ];
    }),
  ];
}

/** Box round everything as it is seen, hidden or not, true size. */
function extentOf(groups: readonly DrawnSurface[]): Box {
  const points = groups.flatMap(({ surface, kinds }) =>
    [...surface.lines]
      .filter((l) => kinds.includes(l.kind))
      .flatMap((l) => [see(ISOMETRIC, l.from).at, see(ISOMETRIC, l.to).at]),
  );
  return boxOfItems([{ kind: 'stroke', pen: 'wide', points }]) as Box;
}

function linesOf(groups: readonly DrawnSurface[], ratio: number): readonly Item[] {
  const visible = visibleBehind(join(groups.map((g) => g.surface)).facets, ISOMETRIC);
  return groups.flatMap(({ pen, surface, kinds }) => {
    const lines = [...surface.lines].filter((l) => kinds.includes(l.kind));
    return visible(lines).map(({ from, to }): Item => {
      const on = ([x, y]: Point): Point => [x * ratio, y * ratio];
      return { kind: 'stroke', pen, points: [on(from), on(to)] };
    });
  });
}

function labelsOf(
  scene: Scene,
  facets: Surface['facets'],
  on: (v: Vec3) => Point,
  { words }: FigureSetting,
): readonly Label[] {
  const { step, drawn, state } = scene;
  const seen = (all: readonly Vec3[]): readonly Vec3[] => {
    const lines = all.map((v) => ({ from: v, to: [v[0] + 0.1, v[1], v[2]] as const, kind: 'mark' as const }));
    const shown = visibleLines({ facets, lines }, ISOMETRIC).map((l) => l.from);
    return all.filter((v) => {
      const [x, y] = see(ISOMETRIC, v).at;
      return shown.some((p) => Math.hypot(p[0] - x, p[1] - y) < 1e-6);
    });
  };
  const spots = (p: FormedPanel): readonly Point[] => {
    const n = p.shape.length;
    const [x, y] = p.shape.reduce((s, q) => [s[0] + q[0] / n, s[1] + q[1] / n], [0, 0]);
    const around = [0.35, 0.7].flatMap((k) =>
      p.shape.map(([u, v]): Point => [x + k * (u - x), y + k * (v - y)]),
    );
    const all = [[x, y] as Point, ...around].flatMap(([u, v]) =>
      [-OFF, state.before.thickness + OFF].map((z) => place3(p.pose, [u, v, z])),
    );
    const free = seen(all);
    return (free.length > 0 ? free : all).map(on);
  };
  const found = (id: string) => state.before.panels.find((p) => p.id === id);
  const label = (id: string, text: string): readonly Label[] => {
    const panel = found(id);
    return panel === undefined
      ? []
      : [{ texts: inLines(text), of: { kind: 'points', at: spots(panel), radius: 0.4 } }];
  };
  return [
    ...drawn.gripped.flatMap((id) => label(id, words.held(id, step))),
    ...drawn.beside.flatMap((id) => label(id, words.turns(id, step))),
    ...stopLabel(scene, on, seen, words),
  ];
}

/** The stop that an edge lies against, at what is seen of it. */
function stopLabel(
  scene: Scene,
  on: (v: Vec3) => Point,
  seen: (all: readonly Vec3[]) => readonly Vec3[],
  { tools }: FigureSetting['words'],
): readonly Label[] {
  const stop = stopDrawn(scene);
  if (stop === null) return [];
  const at = seen([...stop.surface.lines].map((l) => l.from)).map(on);
  return at.length === 0 ? [] : [{ texts: [tools[stop.name]], of: { kind: 'points', at, radius: 0.3 } }];
}
