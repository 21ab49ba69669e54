import { colors, type Piece, pieceKinds } from '../../chess/types.ts';
import { pieceId } from '../../draw/piece-paths.ts';
import { listenForDrags } from './drags.ts';

/** What is set on the next square: a piece, or nothing, which takes off what stands there. */
export type Tool = Piece | 'take-off';

export interface PieceTray {
  readonly element: HTMLElement;
  readonly chosen: Tool | undefined;
  choose(tool: Tool | undefined): void;
}

export interface PieceTrayEvents {
  readonly onChoose: () => void;
  /** A piece was dragged out of the tray and let go at a point of the window. */
  readonly onDrop: (piece: Piece, point: { clientX: number; clientY: number }) => void;
}

export interface PieceTrayWords {
  readonly tray: string;
  readonly takeOff: string;
  nameOf(piece: Piece): string;
}

/** The pieces beside a board: one is chosen by a tap or a key, or dragged from here to its square. */
export function makePieceTray(words: PieceTrayWords, events: PieceTrayEvents): PieceTray {
  const element = document.createElement('div');
  element.className = 'piece-tray';
  element.setAttribute('role', 'group');
  element.setAttribute('aria-label', words.tray);
  const tools = new Map<HTMLButtonElement, Tool>();
  let chosen: Tool | undefined;
  let dragged: Piece | undefined;
  const carried = document.createElement('div');
  carried.className = 'carried-piece';

  for (const color of colors) {
    for (const kind of pieceKinds) {
      const piece = { color, kind };
      addTool(piece, words.nameOf(piece), drawing(piece));
    }
    if (color === 'white') addTool('take-off', words.takeOff, '<span aria-hidden="true">×</span>');
  }

  function addTool(tool: Tool, name: string, drawn: string): void {
    const button = document.createElement('button');
    button.type = 'button';
    button.setAttribute('aria-label', name);
    button.title = name;
    button.setAttribute('aria-pressed', 'false');
    button.innerHTML = drawn;
    if (tool === 'take-off') button.className = 'take-off';
    tools.set(button, tool);
    element.append(button);
  }

  function choose(tool: Tool | undefined): void {
    chosen = tool;
    for (const [button, each] of tools) button.setAttribute('aria-pressed', String(each === tool));
  }

  function toolAt(target: EventTarget | null): Tool | undefined {
    const button = target instanceof Element ? target.closest('button') : null;
    return button === null ? undefined : tools.get(button);
  }

  element.addEventListener('click', ({ target }) => {
    const tool = toolAt(target);
    if (tool === undefined) return;
    choose(tool === chosen ? undefined : tool);
    events.onChoose();
  });
  element.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') choose(undefined);
  });
  listenForDrags(element, {
    onStart(target) {
      const tool = toolAt(target);
      if (tool === undefined || tool === 'take-off') return false;
      dragged = tool;
      carried.innerHTML = drawing(tool);
      element.append(carried);
      return true;
    },
    onMove(_dx, _dy, { clientX, clientY }) {
      carried.style.transform = `translate(${clientX}px, ${clientY}px)`;
    },
    onEnd(event) {
      carried.remove();
      if (dragged !== undefined && event !== undefined) events.onDrop(dragged, event);
      dragged = undefined;
    },
  });

  return {
    element,
    get chosen() {
      return chosen;
    },
    choose,
  };
}

function drawing(piece: Piece): string {
  return `<svg viewBox="0 0 10 10" aria-hidden="true"><use href="#${pieceId(piece)}"/></svg>`;
}
