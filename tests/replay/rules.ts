// What a machine's own figures ask of a step, read off the shop file: tools of the rack, how much of a line they cover,
// how far it bends, what it takes, and whether the stop touches what it is said to touch.
import type { Horns, Shop } from '@tinwright/shop';
import { bentMetal, type Hinge, pointOn, posesFrom } from './body.js';
import { brakeCalled } from './machine.js';
import { at, chain, type Move, shift, type V3 } from './rigid.js';
import { bentIn, type Shopped, type State } from './standing.js';
import { forwardOf, type LineUp, panelOf, type Span, toolSpans, type WrittenStep } from './step.js';

const PLAY = 1e-6;
const STOP = 8; // mm up or down from the sheet that a stop touches; judgement

export function ruleFlaws(given: Shopped, step: WrittenStep, line: LineUp, state: State): readonly string[] {
  const { body, shop, material } = given;
  const T = body.thickness;
  const { bend } = line.hinges[0] as Hinge;
  const up = bend.direction === 'up' ? 'marked' : 'unmarked';
  const wide = Math.max(...line.spans.map((s) => s[1])) - line.left;
  const said = (wrong: boolean, message: string) => (wrong ? [message] : []);
  const common = said(step.faceUp !== up, `${step.faceUp} face up bends it the wrong way`);
  const thick = (list: readonly { readonly material: string; readonly thickness: number }[]) => {
    const own = list.find((c) => c.material === material);
    return said(own !== undefined && T > own.thickness * 1.001, `${T} mm is more than it takes`);
  };
  if (step.machine === 'brake') {
    const brake = brakeCalled(shop, step.machineName);
    if (brake === null || step.setBack === null) return [`there is no brake ${step.machineName}`];
    const { setBack: s, setAngle } = step;
    const passes = (2 * Math.atan(s / T) * 180) / Math.PI;
    return [
      ...common,
      ...thick(brake.capacity),
      ...said(wide > brake.length + PLAY, `the line is ${wide} mm long`),
      ...said(s < brake.setBack[0] * T - PLAY || s > brake.setBack[1] * T + PLAY, `set-back ${s} mm`),
      ...(setAngle === null
        ? []
        : said(
            setAngle > Math.min(passes, brake.leaf.stop, 180 - brake.finger.noseAngle) + 1e-3,
            `set to ${setAngle} degrees`,
          )),
      ...rack(step, line, brake.fingers, brake.gaps, brake.length),
      ...said(
        step.stopDistance !== null && step.stopDistance < brake.finger.foot - PLAY,
        `the rear stop stands under the fingers, ${step.stopDistance} mm behind their edge`,
      ),
      ...stopFlaws(given, step, line, state),
    ];
  }
  if (step.machine === 'press')
    return [
      ...common,
      ...pressRules(shop, step, line, { wide, bends: bend.hem === undefined, thickness: T }),
      ...stopFlaws(given, step, line, state),
    ];
  const { vise, handSeamer, formerBlock } = shop;
  const gripper = step.clamp === 'seamer' ? handSeamer : step.clamp === 'former' ? formerBlock : vise;
  if (gripper === null) return ['there is nothing to hold it with'];
  const most = 'jaws' in gripper ? gripper.jaws : 'length' in gripper ? gripper.length : gripper.width;
  return [
    ...common,
    ...thick(gripper.capacity),
    ...said(wide > most + PLAY, `the line is ${wide} mm long`),
    ...said(
      step.action !== 'close' && (step.setAngle ?? step.angle) > 95 + PLAY,
      `${step.angle} degrees by hand`,
    ),
  ];
}

function pressRules(
  { press }: Shop,
  step: WrittenStep,
  line: LineUp,
  { wide, bends, thickness }: { readonly wide: number; readonly bends: boolean; readonly thickness: number },
): readonly string[] {
  const punch = press?.punches.find((p) => p.name === step.press?.punch);
  const die = press?.dies.find((d) => d.name === step.press?.die);
  if (press === null || step.press === null || punch === undefined || die === undefined)
    return ['there is no such punch or die'];
  const { force, gauge, horns } = step.press;
  const said = (wrong: boolean, message: string) => (wrong ? [message] : []);
  const { least, most } = press.backGauge;
  const turned = step.setAngle ?? step.angle;
  return [
    ...said(wide > press.length + PLAY, `the line is ${wide} mm long`),
    ...said(
      step.action !== 'close' && die.opening < 4 * thickness - PLAY,
      `a V of ${die.opening} for ${thickness} mm`,
    ),
    ...said(bends && force > press.force + PLAY, `takes ${force} kN`),
    ...said(
      step.action !== 'close' && turned > 180 - Math.max(punch.angle, die.angle) + 1e-3,
      `set to ${turned} degrees`,
    ),
    ...said(gauge !== null && (gauge < least - PLAY || gauge > most + PLAY), `back gauge at ${gauge} mm`),
    ...rack(step, line, [...punch.lengths, ...(horns?.widths ?? [])], press.gaps, press.length),
    ...said(
      horns !== null && JSON.stringify(horns) !== JSON.stringify(punch.horns),
      'there are no such horns',
    ),
    ...said(horns !== null && !standOut(step.tools, horns), 'horns stand elsewhere than at the ends'),
  ];
}

/** The left horn first of all tools, the right one last. */
function standOut(tools: WrittenStep['tools'], { widths: [left, right] }: Horns): boolean {
  const groups = (tools ?? []).toSorted((a, b) => a.from - b.from);
  return groups[0]?.pieces[0] === left && groups.at(-1)?.pieces.at(-1) === right;
}

function rack(
  step: WrittenStep,
  line: LineUp,
  pieces: readonly number[],
  gaps: { readonly end: number; readonly inner: number },
  length: number,
): readonly string[] {
  if (step.tools === null) return [];
  const left = [...pieces];
  for (const p of step.tools.flatMap((g) => g.pieces)) {
    const i = left.indexOf(p);
    if (i < 0) return [`there is no more tool of ${p} mm`];
    left.splice(i, 1);
  }
  const spans = toolSpans(step, line.left).toSorted((a, b) => a[0] - b[0]);
  const over = spans.some((s, i) => i > 0 && s[0] < (spans[i - 1] as Span)[1] - PLAY);
  const wide = (spans.at(-1)?.[1] ?? 0) - (spans[0]?.[0] ?? 0);
  const right = Math.max(...line.spans.map((s) => s[1]));
  const bare = line.spans
    .flatMap((l) => spans.reduce<readonly Span[]>((open, s) => open.flatMap((o) => without(o, s)), [l]))
    .filter(([a, b]) => b - a > (a <= line.left + PLAY || b >= right - PLAY ? gaps.end : gaps.inner) + PLAY);
  return [
    ...(over ? ['tools stand in each other'] : []),
    ...(step.tools.some((g) => g.gap > gaps.inner + PLAY) ? ['tools stand too far apart'] : []),
    ...(wide > length + PLAY ? [`tools stand over ${wide.toFixed(0)} mm`] : []),
    ...bare.map(([a, b]) => `${(b - a).toFixed(1)} mm of the line stay bare`),
  ];
}

const without = ([from, to]: Span, [a, b]: Span): readonly Span[] =>
  b <= from || a >= to
    ? [[from, to]]
    : [...(a > from ? [[from, a] as const] : []), ...(b < to ? [[b, to] as const] : [])];

/** The panel that is said to lie against the stop or the gauge does so, on flat sheet or with its outside. */
function stopFlaws({ body }: Shopped, step: WrittenStep, line: LineUp, state: State): readonly string[] {
  const behind = step.machine === 'press' ? step.press?.gauge : step.stopDistance;
  if (behind === null || behind === undefined) return [];
  if (step.touches === null) return ['nothing is said to touch the stop'];
  const bent = bentIn(body, state);
  const poses = posesFrom(body, line.root, (h) =>
    line.hinges.includes(h) ? { turn: 0, radius: 0, wound: 0 } : bent(h),
  );
  const nose = step.machine === 'press' ? 0 : forwardOf(line, step.sight?.[0]?.[0] ?? [0, 0]);
  const panel = panelOf(body, step.touches.panel);
  const by = chain(line.place, shift(0, 0, 0), poses.panels[panel] as Move);
  const { corners } = body.panels[panel] as (typeof body.panels)[number];
  const ring = corners.map(([x, y]) => at(by, [x, y, 0]));
  const rear = -(behind - nose);
  const edges = ring.map((p, i) => [p, ring[(i + 1) % ring.length] as V3] as const);
  // over a line that is not bent yet the sheet goes on
  const goesOn = body.hinges.flatMap((h): readonly Span[] => {
    const unbent = h.sides.includes(panel) && !line.hinges.includes(h) && bent(h).turn === 0;
    const [p, q] = [h.start, pointOn(h, h.length, 0)].map(([x, y]) => at(line.place, [x, y, 0])) as [V3, V3];
    const there = [p, q].every((e) => Math.abs(e[0] - rear) < h.bend.zone / 2 + 0.05);
    return unbent && there ? [[Math.min(p[1], q[1]), Math.max(p[1], q[1])]] : [];
  });
  const flatAt = edges.some(
    ([p, q]) =>
      Math.abs(p[0] - rear) < 0.05 &&
      Math.abs(q[0] - rear) < 0.05 &&
      goesOn
        .reduce<readonly Span[]>(
          (left, s) => left.flatMap((l) => without(l, s)),
          [[Math.min(p[1], q[1]), Math.max(p[1], q[1])]],
        )
        .some(([from, to]) => to - from > 10),
  );
  if (step.touches.by === 'edge') return flatAt ? [] : [`no edge of ${step.touches.panel} lies at the stop`];
  // the metal of the bend that leads to it; what stands off beside it is passed by a stop
  const metal = body.hinges.flatMap((h, i) => {
    const pose = poses.hinges[i] as (typeof poses.hinges)[number];
    const leads = h.sides[pose.from === -1 ? 1 : 0] === panel && !line.hinges.includes(h);
    return leads ? bentMetal(body, h, pose, bent(h)).flatMap((m) => m.points) : [];
  });
  // a stop stands as high as the sheet lies
  const faces = [
    ...corners.flatMap(([x, y]) => [0, body.thickness].map((z) => at(by, [x, y, z]))),
    ...metal.map((p) => at(line.place, p)),
  ].flatMap(([x, , z]) => (Math.abs(z) < STOP ? [x] : []));
  return Math.abs(Math.min(...faces) - rear) < 0.3
    ? []
    : [`the outside of ${step.touches.panel} does not lie at the stop`];
}
