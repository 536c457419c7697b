import { useComputed } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { Findings, Totals } from './findings.js';
import { withChanges } from './job-text.js';
import { linkOf } from './link.js';
import { Refit } from './refit.js';
import { Save } from './save.js';
import { Sizes } from './sizes.js';
import { bare } from './space.js';
import type { State } from './state.js';
import { changesToUnit, unitOf } from './units.js';
import { Views } from './views.js';

/** The whole page. */
export function App({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  return (
    <div lang={words.language}>
      <div class="screen">
        <Head state={state} />
        <p class="said" role="status">
          {state.said.value}
        </p>
        <main>
          <div class="column sizes">
            <h2>{words.sizes}</h2>
            <Sizes state={state} />
            <Text state={state} />
          </div>
          <div class="column views">
            <Views state={state} />
          </div>
          <div class="column rest">
            <Section id="save" title={words.save}>
              <Save state={state} />
            </Section>
            <Section id="findings" title={words.findings}>
              <Findings state={state} />
            </Section>
            <Section id="refit" title={words.refit}>
              <Refit state={state} />
            </Section>
          </div>
        </main>
      </div>
      <div class="print">
        {state.prints.value.length === 0 ? <p>{words.printing}</p> : null}
        {state.prints.value.map(({ svg, paper }) => (
          // our own writer's text: names in it are escaped
          <div key={svg} class={`sheet ${paper}`} dangerouslySetInnerHTML={{ __html: bare(svg) }} />
        ))}
      </div>
    </div>
  );
}

function Section({
  id,
  title,
  children,
}: {
  id: string;
  title: string;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}

function Head({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const units = useComputed(() => unitOf(state.data.value)).value;
  const { families = [] } = state.catalogue.value ?? {};
  return (
    <header>
      <h1>{state.job.value?.name || 'Tinwright'}</h1>
      <Totals state={state} />
      <div class="row">
        <button type="button" disabled={!state.canUndo.value} onClick={state.undo}>
          {words.undo}
        </button>
        <button type="button" disabled={!state.canRedo.value} onClick={state.redo}>
          {words.redo}
        </button>
        <label>
          {words.units}{' '}
          <select
            value={units}
            disabled={state.content.locked.length > 0}
            onChange={(e) => {
              const to = e.currentTarget.value === 'in' ? 'in' : 'mm';
              state.write(withChanges(state.text.value, changesToUnit(state.data.value, families, to)));
            }}
          >
            <option value="mm">mm</option>
            <option value="in">in</option>
          </select>
        </label>
        <label>
          {words.language_}{' '}
          <select
            value={state.language.value}
            onChange={(e) => {
              state.speak(e.currentTarget.value === 'de' ? 'de' : 'en');
            }}
          >
            <option value="en">English</option>
            <option value="de">Deutsch</option>
          </select>
        </label>
        <button
          type="button"
          onClick={() => {
            location.hash = linkOf(state.text.value);
            state.said.value = words.shared;
          }}
        >
          {words.share}
        </button>
      </div>
    </header>
  );
}

function Text({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  return (
    <details class="text">
      <summary>{words.jobText}</summary>
      <textarea
        aria-label={words.jobText}
        spellcheck={false}
        rows={24}
        value={state.text.value}
        onInput={(e) => {
          const area = e.currentTarget;
          state.write(area.value, 'text');
          // what a lock forbids is not taken: the text stays as it was
          if (area.value !== state.text.value) area.value = state.text.value;
        }}
      />
    </details>
  );
}

/** Undo and redo by keys. */
export function keyed(e: KeyboardEvent, state: State): void {
  const key = e.key.toLowerCase();
  if (!(e.ctrlKey || e.metaKey) || (key !== 'z' && key !== 'y')) return;
  e.preventDefault();
  if (key === 'y' || e.shiftKey) state.redo();
  else state.undo();
}
