import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Piece } from './piece-mesh.js';
import { type SpaceView, spaceView } from './scene.js';
import type { State } from './state.js';

interface Props {
  readonly state: State;
  readonly label: string;
  readonly pieces: readonly Piece[];
  /** Changes when the view should frame what it shows anew. */
  readonly frame: string;
  /** Part whose picture stands in where the browser draws nothing in space; null for the object. */
  readonly instead: string | null;
  readonly onPoint: (under: Under | null) => void;
  /** Pressed without turning. */
  readonly onPress?: (under: Under) => void;
}

/** A panel or bend of a piece. */
interface Under {
  readonly piece: string;
  readonly id: string;
}

const TURN = 0.4; // degrees a pixel
const STILL = 4; // pixels a press may move

/** A view in space that can be turned by mouse, finger or keys. */
export function Space({ state, label, pieces, frame, instead, onPoint, onPress }: Props): JSX.Element {
  const words = state.words.value;
  const canvas = useRef<HTMLCanvasElement>(null);
  const view = useRef<SpaceView | null>(null);
  const framed = useRef('');
  const down = useRef(new Map<number, readonly [number, number]>());
  const pressed = useRef<readonly [number, number]>([0, 0]);
  const [works, setWorks] = useState(true);
  useEffect(() => {
    const here = canvas.current;
    if (here === null) return;
    try {
      view.current = spaceView(here);
    } catch {
      setWorks(false);
      return;
    }
    const open = view.current;
    const dark = matchMedia('(prefers-color-scheme: dark)');
    const paint = () => {
      const style = getComputedStyle(here);
      const of = (name: string) => style.getPropertyValue(name).trim();
      open.paint({ sheet: of('--sheet'), edge: of('--ink'), lit: of('--lit') });
    };
    const sized = new ResizeObserver(() => open.resize(here.clientWidth, here.clientHeight));
    sized.observe(here);
    dark.addEventListener('change', paint);
    paint();
    return () => {
      sized.disconnect();
      dark.removeEventListener('change', paint);
      open.close();
      view.current = null;
    };
  }, []);
  useEffect(() => {
    view.current?.show(pieces, framed.current === frame ? 'view' : 'frame');
    framed.current = frame;
  }, [pieces, frame]);
  const lit = state.lit.value;
  const part = state.chosen.value;
  useEffect(() => view.current?.light(lit, part), [lit, part, pieces]);
  if (!works) return <Picture state={state} label={label} part={instead} />;
  return (
    <canvas
      ref={canvas}
      class="space"
      role="img"
      tabIndex={0}
      aria-label={`${label}. ${words.turnHelp}`}
      onKeyDown={(e) => keyed(e, view.current)}
      onWheel={(e) => {
        e.preventDefault();
        view.current?.zoom(e.deltaY < 0 ? 1.1 : 1 / 1.1);
      }}
      onClick={(e) => {
        const [x, y] = pressed.current;
        const under = underPointer(e, view.current);
        if (under !== null && Math.hypot(e.clientX - x, e.clientY - y) < STILL) onPress?.(under);
      }}
      onPointerDownCapture={(e) => {
        pressed.current = [e.clientX, e.clientY];
      }}
      {...fingers(down.current, view, onPoint)}
    />
  );
}

/** The files' own picture, for those whose browser draws nothing in space. */
function Picture({ state, label, part }: { state: State; label: string; part: string | null }): JSX.Element {
  const [svg, setSvg] = useState<string | null>(null);
  const data = state.data.value;
  useEffect(() => {
    let wanted = true;
    void state.engine.ask('picture', { data, part }).then((found) => {
      if (wanted && found !== null) setSvg(found);
    });
    return () => {
      wanted = false;
    };
  }, [data, part, state]);
  return (
    <>
      <p>{state.words.value.noSpace}</p>
      {/* our own writer's text: names in it are escaped */}
      <div
        class="drawing"
        role="img"
        aria-label={label}
        dangerouslySetInnerHTML={{ __html: bare(svg ?? '<svg/>') }}
      />
    </>
  );
}

function keyed(e: KeyboardEvent, view: SpaceView | null): void {
  const turns: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [10, 0],
    ArrowRight: [-10, 0],
    ArrowUp: [0, 10],
    ArrowDown: [0, -10],
  };
  const turn = turns[e.key];
  if (turn !== undefined) view?.turn(...turn);
  else if (e.key === '+' || e.key === '=') view?.zoom(1.2);
  else if (e.key === '-') view?.zoom(1 / 1.2);
  else return;
  e.preventDefault();
}

/** One finger or the mouse turns, two come closer; what lies under a resting pointer is told. */
interface Fingers {
  readonly onPointerDown: (e: Pointed) => void;
  readonly onPointerMove: (e: Pointed) => void;
  readonly onPointerUp: (e: Pointed) => void;
  readonly onPointerCancel: (e: Pointed) => void;
}

type Pointed = PointerEvent & { readonly currentTarget: HTMLCanvasElement };

function fingers(
  down: Map<number, readonly [number, number]>,
  view: { readonly current: SpaceView | null },
  onPoint: Props['onPoint'],
): Fingers {
  const spread = () => {
    const [a, b] = [...down.values()];
    return a === undefined || b === undefined ? 0 : Math.hypot(a[0] - b[0], a[1] - b[1]);
  };
  const up = (e: Pointed) => {
    down.delete(e.pointerId);
  };
  return {
    onPointerDown: (e) => {
      e.currentTarget.setPointerCapture(e.pointerId);
      down.set(e.pointerId, [e.clientX, e.clientY]);
      point(e, view.current, onPoint);
    },
    onPointerMove: (e) => {
      const last = down.get(e.pointerId);
      if (last === undefined) {
        point(e, view.current, onPoint);
        return;
      }
      const before = spread();
      down.set(e.pointerId, [e.clientX, e.clientY]);
      if (down.size > 1 && before > 0) view.current?.zoom(spread() / before);
      else view.current?.turn(-(e.clientX - last[0]) * TURN, (e.clientY - last[1]) * TURN);
    },
    onPointerUp: up,
    onPointerCancel: up,
  };
}

function point(e: Pointed, view: SpaceView | null, onPoint: Props['onPoint']): void {
  onPoint(underPointer(e, view));
}

function underPointer(
  e: MouseEvent & { readonly currentTarget: HTMLCanvasElement },
  view: SpaceView | null,
): Under | null {
  const { left, top, width, height } = e.currentTarget.getBoundingClientRect();
  return view?.under((2 * (e.clientX - left)) / width - 1, 1 - (2 * (e.clientY - top)) / height) ?? null;
}

/** An SVG without its declaration, to stand in a page. */
export const bare = (svg: string): string => svg.slice(svg.indexOf('<svg'));
