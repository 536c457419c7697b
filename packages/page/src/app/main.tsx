// The page: reads what it was made with, opens its workers, draws itself.
import { render } from 'preact';
import type { PageContent } from '../content.js';
import { App, keyed } from './app.js';
import { engine } from './engine.js';
import { textOf } from './link.js';
import { pageState } from './state.js';

const read = (id: string): string => document.getElementById(id)?.textContent ?? '';

const content = JSON.parse(read('content')) as PageContent;
const shared = textOf(location.hash);
const state = pageState(engine(read('worker')), content);
if (shared !== null && shared !== 'bad') state.write(shared);
const place = document.getElementById('page');
if (place !== null) render(<App state={state} />, place);
if (shared === 'bad') state.said.value = state.words.value.badLink;
addEventListener('keydown', (e) => keyed(e, state));
addEventListener('hashchange', () => {
  const linked = textOf(location.hash);
  if (linked === 'bad') state.said.value = state.words.value.badLink;
  else if (linked !== null) state.write(linked);
});
