import { useComputed } from '@preact/signals';
import type { JSX } from 'preact';
import { Flat } from './flat.js';
import { Fold, Step } from './fold.js';
import { Space } from './space.js';
import type { State } from './state.js';

/** Three views of one truth: what is pointed at in one is lit in all. */
export function Views({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const alone = useComputed(() => {
    const solid = state.stage.value ?? (state.quick.value ?? state.part.value)?.solid;
    return solid === undefined
      ? []
      : [{ name: state.chosen.value, part: state.chosen.value, solid, matrix: null }];
  });
  const whole = useComputed(() => {
    const { object, parts = [] } = state.job.value ?? {};
    return (object ?? []).flatMap(({ piece, part, matrix, solid: own }) => {
      const solid = own ?? parts.find((p) => p.name === part)?.solid;
      return solid === undefined ? [] : [{ name: piece, part, solid, matrix }];
    });
  });
  const { object, parts = [] } = state.job.value ?? {};
  return (
    <>
      <section aria-labelledby="flat">
        <h2 id="flat">
          {words.flat}: {state.chosen.value}
        </h2>
        <Flat state={state} />
      </section>
      <section aria-labelledby="formed">
        <h2 id="formed">
          {words.formed}: {state.chosen.value}
        </h2>
        <Fold state={state} />
        <Space
          state={state}
          label={words.formed}
          pieces={alone.value}
          frame={state.part.value?.name ?? ''}
          instead={state.chosen.value}
          onPoint={(under) => {
            state.lit.value = under?.id ?? null;
          }}
        />
        <Step state={state} />
      </section>
      {object === null || object === undefined ? null : (
        <section aria-labelledby="object">
          <h2 id="object">{words.object}</h2>
          <Space
            state={state}
            label={words.object}
            pieces={whole.value}
            frame={object.map((o) => o.piece).join()}
            instead={null}
            onPoint={(under) => {
              const part = object.find((o) => o.piece === under?.piece)?.part;
              state.lit.value = part === state.chosen.value ? (under?.id ?? null) : null;
            }}
            onPress={(under) => {
              const part = object.find((o) => o.piece === under.piece)?.part;
              if (part === undefined || !parts.some((p) => p.name === part)) return; // a bought part has no pattern
              if (part !== state.chosen.value) state.choose(part);
              state.lit.value = under.id;
            }}
          />
          <p class="row">
            {parts.map((p) => (
              <button
                key={p.name}
                type="button"
                aria-pressed={p.name === state.chosen.value}
                onClick={() => state.choose(p.name)}
              >
                {p.name}
              </button>
            ))}
          </p>
        </section>
      )}
    </>
  );
}
