import { strToU8 } from 'fflate';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { FileView } from '../protocol.js';
import type { State } from './state.js';

/** Everything the job can be written as, to be saved on this computer. */
export function Save({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const [writing, setWriting] = useState('');
  const { formats = [] } = state.catalogue.value ?? {};
  const { worksheet } = state.content;
  const whole = state.job.value?.object ?? null;
  const bad = state.problems.value.length > 0 || state.textProblem.value !== null;
  const save = async (what: string) => {
    setWriting(what);
    try {
      const files = await state.engine.askApart('files', {
        data: state.data.value,
        text: state.text.value,
        what,
        part: state.chosen.value,
        language: state.language.value,
      });
      for (const f of files) download(f);
    } catch (error) {
      state.said.value = `${words.fault} ${error instanceof Error ? error.message : error}`;
    }
    setWriting('');
  };
  const button = (what: string, label: string) => (
    <button
      key={what}
      type="button"
      disabled={bad || writing !== ''}
      data-save={what}
      onClick={() => void save(what)}
    >
      {label}
    </button>
  );
  return (
    <>
      {worksheet ? null : <p class="row">{button('all', words.everything)}</p>}
      <p class="row">
        {formats
          .filter((f) => f.format !== 'glb')
          .map((f) => button(f.format, `${f.words} ${state.chosen.value}`))}
        {worksheet ? null : button('plan', `${words.plan} ${state.chosen.value}`)}
      </p>
      <p class="row">
        {whole === null ? null : button('glb', `glTF ${words.object}`)}
        {worksheet ? button('worksheet', words.worksheetFile) : button('packet', words.packet)}
        {button('job', words.jobFile)}
      </p>
      <p role="status">{writing === '' ? '' : words.saving}</p>
      <p>
        <small>{words.caution}</small>
      </p>
    </>
  );
}

function download({ path, content }: FileView): void {
  const bytes = typeof content === 'string' ? strToU8(content) : content;
  const url = URL.createObjectURL(new Blob([bytes]));
  const link = document.createElement('a');
  link.href = url;
  link.download = path.slice(path.lastIndexOf('/') + 1);
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
