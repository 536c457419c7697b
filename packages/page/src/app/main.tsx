// The page: reads what it was made with, opens its workers, draws itself.
import { render } from 'preact';
import type { PageContent } from '../content.js';
import { App, keyed } from './app.js';
import { engine } from './engine.js';
import { type Linked, linked } from './link.js';
import { pageState } from './state.js';

const read = (id: string): string => document.getElementById(id)?.textContent ?? '';

const content = JSON.parse(read('content')) as PageContent;
const state = pageState(engine(read('worker')), content);
const shared = linked(location.hash);
if (shared !== null && 'text' in shared) state.write(shared.text);
const place = document.getElementById('page');
if (place !== null) render(<App state={state} />, place);
tell(shared);
addEventListener('keydown', (e) => keyed(e, state));
addEventListener('hashchange', () => {
  const now = linked(location.hash);
  if (now !== null && 'text' in now) state.write(now.text);
  tell(now);
});

function tell(link: Linked | null): void {
  if (link !== null && 'unread' in link) state.said.value = state.words.value[link.unread];
}
