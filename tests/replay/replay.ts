// A bend order replayed from what was written, job.json and the cut file, with the values of the shop file: every panel
// and every bend's metal as solids through every stroke, and on the way in and off. Nothing of the planner's geometry.
import type { Body, Hinge } from './body.js';
import { barTools, closingFlaws, malletTools, onWall } from './closing.js';
import { liftFlaws } from './lift.js';
import {
  brakeCalled,
  type Draw,
  drawing,
  jawTools,
  leafMoment,
  leafTools,
  pressMoment,
  pressTools,
  rearStop,
  turnedOver,
} from './machine.js';
import { STAY, shift } from './rigid.js';
import { ruleFlaws } from './rules.js';
import { atMoment, type Done, type Shopped, type Standing, type State, standingFor } from './standing.js';
import { forwardOf, type LineUp, lineUp, panelOf, type Span, toolSpans, type WrittenStep } from './step.js';
import { strokeFlaws } from './stroke.js';
import { comes } from './ways.js';

const TOUCH = 0.5; // mm taken off every side of a tool: what touches does not meet; edges of sheet may lie so far over a line

/** What is wrong with an order, first of it; empty when all of it can be done. */
export function replay(given: Shopped, steps: readonly WrittenStep[]): readonly string[] {
  const { body } = given;
  const draw = drawing(given.library, -TOUCH);
  const state = new Map<string, Done>();
  for (const [i, step] of steps.entries()) {
    const turn = outOfTurn(body, step, state);
    const flaws = turn.length > 0 ? turn : stepFlaws(given, draw, step, state);
    if (flaws.length > 0)
      return flaws.map(
        (f) => `${i + 1} ${step.action} ${step.bends.join('+')} on ${step.clamp ?? step.machine}: ${f}`,
      );
    for (const id of step.bends) state.set(id, step);
  }
  const left = body.hinges.filter(({ bend }) => (state.get(bend.id)?.action ?? 'fold') === 'fold');
  return left.map(({ bend }) => `${bend.id} is never done`);
}

function outOfTurn(body: Body, { bends, action, angle }: WrittenStep, state: State): readonly string[] {
  return bends.flatMap((id) => {
    const hinge = body.hinges.find((h) => h.bend.id === id);
    if (hinge === undefined) return [`there is no bend ${id}`];
    const before = state.get(id)?.action;
    if (before !== (action === 'close' ? 'fold' : undefined)) return [`${id} is ${before ?? 'flat'} already`];
    return action === 'bend' && Math.abs(angle - hinge.bend.angle) > 1e-6
      ? [`${id} wants ${hinge.bend.angle} degrees`]
      : [];
  });
}

function stepFlaws(given: Shopped, draw: Draw, step: WrittenStep, state: State): readonly string[] {
  const { body } = given;
  if (step.action === 'roll') return [];
  const hinges = step.bends.map((id) => body.hinges.find((h) => h.bend.id === id) as Hinge);
  const root = panelOf(body, step.held);
  if (!(hinges[0] as Hinge).sides.includes(root)) return [`${step.held} is not beside the line`];
  const line = lineUp(body, hinges, root);
  const standing = standingFor(body, line, step, state);
  const run = { brake: onBrake, press: onPress, vise: byHand, hand: byHand }[step.machine];
  return [...ruleFlaws(given, step, line, state), ...run(given, draw, step, standing, state)];
}

function onBrake({ shop }: Shopped, draw: Draw, step: WrittenStep, standing: Standing): readonly string[] {
  const brake = brakeCalled(shop, step.machineName);
  if (brake === null) return [`there is no brake ${step.machineName}`];
  const { line, stroke, body, set } = standing;
  const s = step.setBack as number;
  const closing = step.action === 'close';
  const spans = toolSpans(step, line.left);
  const tools = leafTools(draw, brake, closing ? 2 * body.thickness : body.thickness, s, spans);
  const by = closing
    ? shift(-s + stroke.zone / 2, 0, 0)
    : shift(-s - forwardOf(line, step.sight?.[0]?.[0] ?? [0, 0]), 0, 0);
  const trapped = (at: 'before' | 'after') => {
    const turn = at === 'after' && !closing ? set : 0;
    const moment = leafMoment(tools, stroke, turn);
    const { held, free } = atMoment(
      standing,
      { ...moment, ...(closing ? { free: STAY, held: STAY } : {}) },
      by,
    );
    return {
      solids: [...held, ...(closing ? [] : free)].flatMap((o) => o.solids),
      tools,
      opening: brake.opening,
      setBack: s,
      thickness: body.thickness,
    };
  };
  const flaws = closing
    ? strokeFlaws(
        { ...standing, set: 0 },
        by,
        () => ({ ...leafMoment(tools, stroke, 0), free: STAY, held: STAY }),
        (p) => line.free.has(p),
      )
    : strokeFlaws(
        standing,
        by,
        (turn) => {
          const moment = leafMoment(tools, stroke, turn);
          return { ...moment, tools: [...moment.tools, ...rearStop(draw, brake, step, line.left)] };
        },
        curved(step, line),
      );
  if (flaws.length > 0) return flaws;
  const { putIn, takeOff } = step;
  return [
    ...(putIn === null || comes(putIn, trapped('before')) ? [] : [`does not come in ${putIn}`]),
    ...(takeOff === null || comes(takeOff, trapped('after')) ? [] : [`does not come off ${takeOff}`]),
  ];
}

/** The first of a fold is not flat while it turns: all between nose and hinge is bent, and comes off the bed so. */
const curved = ({ action }: WrittenStep, { free, hinges }: LineUp) => {
  const own = new Set(hinges.flatMap((h) => h.sides).filter((p) => free.has(p)));
  return (panel: number, tool: string) => action === 'fold' && tool === 'bed' && own.has(panel);
};

function onPress(
  { shop }: Shopped,
  draw: Draw,
  step: WrittenStep,
  standing: Standing,
  state: State,
): readonly string[] {
  const { press } = shop;
  if (press === null || step.press === null) return ['there is no press'];
  const { line, stroke } = standing;
  const spans = toolSpans(step, line.left);
  const folded = { body: standing.body, line, state };
  if (step.action === 'close') return closingFlaws(folded, barTools(draw, folded, 0));
  const { gauge } = step.press;
  const { touches } = step;
  const against = gauge === null || touches === null ? null : { behind: gauge, at: line.left + touches.at };
  const tools = pressTools(draw, press, step.press, spans, against);
  const momentAt = (turn: number) => pressMoment(tools, stroke, turn);
  // a press is set by trying: what the metal opens again has to be free
  const over = { ...standing, set: standing.set + (press.overbend * Math.PI) / 180 };
  const flaws = strokeFlaws(over, STAY, momentAt);
  return flaws.length > 0 ? flaws : liftFlaws(standing, tools, momentAt, { ...step, spans });
}

const SQUARE = Math.PI / 2; // past it the sheet lies on the bar and is laid over

function byHand(
  { shop }: Shopped,
  draw: Draw,
  step: WrittenStep,
  all: Standing,
  state: State,
): readonly string[] {
  const folded = onWall({ body: all.body, line: all.line, state });
  const dressed = () => closingFlaws(folded, malletTools(draw, folded, 0));
  if (step.action === 'close') return dressed();
  // bent square over bars a fold is laid over with a mallet on the bench, in pliers with them
  const laid = step.action === 'fold' && step.clamp !== 'seamer' ? dressed() : [];
  if (laid.length > 0) return laid;
  const standing = { ...all, set: Math.min(all.set, SQUARE) };
  const { line, stroke } = standing;
  const { vise, handSeamer, formerBlock } = shop;
  const ends: Span = [Math.min(...line.spans.map((s) => s[0])), Math.max(...line.spans.map((s) => s[1]))];
  const back = (stroke.radius + stroke.thickness) * Math.tan(Math.min(stroke.angle, Math.PI / 2) / 2);
  const by = shift(-back + stroke.zone / 2, 0, 0);
  const with_ = (gripper: Parameters<typeof jawTools>[1]) => {
    const tools = jawTools(draw, gripper, stroke.thickness, ends);
    return strokeFlaws(standing, by, (turn) => ({ tools, held: STAY, free: turnedOver(stroke, turn) }));
  };
  if (step.clamp === 'seamer')
    return handSeamer === null ? ['there is no seamer'] : with_({ seamer: handSeamer });
  if (step.clamp === 'former')
    return formerBlock === null ? ['there is no block'] : with_({ former: formerBlock });
  if (vise === null) return ['there is no vise'];
  if (step.clamp === 'bench') return with_({ bench: vise });
  const both = ([1, -1] as const).map((side) => with_({ vise, side }));
  return both.some((f) => f.length === 0) ? [] : (both[0] as readonly string[]);
}
