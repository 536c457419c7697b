import type { Unit } from '@tinwright/core';
import type { Sequence } from '@tinwright/shop';
import { type Language, mendWords, plainPrint, reasonWords, stepLine } from '@tinwright/words';
import { sayOf } from '@tinwright/words/internal';

/** A part's bend order as the manifest tells it: lengths mm, words in the unit of the job. */
export function sequenceEntry(sequence: Sequence, unit: Unit, language: Language = 'en'): object {
  const { status, proved, toolsKept, gap, seconds, steps, reasons, mends, shop } = sequence;
  const say = sayOf(unit, language);
  const print = plainPrint(say, say, language);
  return {
    status,
    shop,
    proved,
    toolsKept,
    ...(status === 'feasible' ? { gap } : {}),
    ...(status === 'infeasible' ? {} : { seconds }),
    operations: steps.map((step) => ({
      bends: step.bends,
      machine: step.machine,
      machineName: step.machineName,
      note: stepLine(step, language, print),
      action: step.action,
      clamp: step.clamp,
      held: step.held,
      faceUp: step.faceUp,
      angle: step.angle,
      setAngle: step.setAngle,
      setBack: step.setBack,
      stopDistance: step.stopDistance,
      touches: step.touches,
      putIn: step.putIn,
      takeOff: step.takeOff,
      tools: step.tools,
      sight: step.sight,
      sightOffset: step.sightOffset,
      press: step.press,
    })),
    reasons: reasons.map(({ code, ...reason }) => ({
      ...reason,
      obstacle: code,
      message: reasonWords({ code, ...reason }, say, language),
    })),
    ...(mends.length === 0
      ? {}
      : {
          mends: mends.map((mend) => ({ ...mend, message: mendWords(mend, say, language) })),
        }),
  };
}
