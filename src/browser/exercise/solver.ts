import { numberSign } from '../../chess/letters.ts';
import { type ExerciseGrade, exercisesPage } from '../../contract/exercise-results.ts';
import { fill } from '../../contract/sentence.ts';
import type { BoardMove, BoardRefusal } from '../board/board-state.ts';
import type { MoveEntry } from '../board/move-entry.ts';
import type { Spot } from '../spots.ts';
import { numbered, spoken } from '../words.ts';
import { legalHere, type MoveHere } from './legal-here.ts';
import { type Exercise, keyOf, type SpotMove } from './read-exercise.ts';
import { courseOfPage, keepResult, nextInRound } from './results.ts';
import { type ExerciseController, showPosition } from './show-position.ts';
import type { Talk } from './talk.ts';
import { beginWalk, type MoveResult, movesToFind, takeStep, type Walk } from './walk-answer.ts';

/** Milliseconds before the other side moves: the reader's own move is seen first. */
const pause = 700;

export interface SolverParts {
  readonly talk: Talk;
  readonly entry: MoveEntry;
  readonly controls: HTMLElement;
}

/** Asks one exercise: takes the reader's moves, plays those of the other side, and says how it went. */
export class Solver {
  readonly #section: HTMLElement;
  readonly #exercise: Exercise;
  readonly #parts: SolverParts;
  readonly #shown: ExerciseController;
  #walk: Walk<SpotMove>;
  #legal: readonly MoveHere[] = [];
  #over = false;
  /** Whether it was asked for help, or tried another move; or the answer is known from before. */
  #missed = false;
  #seen = false;
  /** Plays the move of the other side that is still to come. */
  #reply: (() => void) | undefined;

  constructor(section: HTMLElement, exercise: Exercise, parts: SolverParts) {
    this.#section = section;
    this.#exercise = exercise;
    this.#parts = parts;
    this.#shown = showPosition(exercise);
    this.#walk = beginWalk(exercise.moves);
  }

  /** Asks from the beginning. `glides`: the move before the question is seen. */
  begin(glides: boolean): void {
    this.#reply = undefined;
    this.#walk = beginWalk(this.#exercise.moves);
    this.#over = false;
    this.#missed = this.#seen;
    this.#parts.controls.hidden = false;
    this.#parts.talk.setEnd(undefined);
    this.#section.classList.remove('answered');
    this.say('');
    this.#stand(glides);
  }

  /** The legal moves where the reader is to move. */
  movesHere(): readonly BoardMove[] {
    this.backToPlace();
    return this.#legal;
  }

  /** Shows the position that is asked, if another one is shown or still to come. */
  backToPlace(): void {
    if (this.#over) return;
    if (this.#reply !== undefined) this.#reply();
    else if (this.#shown.spot !== this.#place()) {
      this.say('');
      this.#stand(false);
    }
  }

  answer(made: BoardMove): void {
    const move = this.#legal.find(({ san }) => san === made.san);
    if (this.#over || move === undefined) return;
    this.#parts.entry.clear();
    const step = takeStep(this.#walk, move.id, this.#exercise.moves);
    if (step.kind === 'right') this.#right(step);
    else if (step.kind === 'wrong') this.#wrong(step.move);
    else {
      this.#missed = true;
      this.#shown.show(this.#place(), this.#legal);
      const named = { move: this.#number() + move.san };
      this.say(fill(this.#words.exercise.legal, named));
    }
  }

  refuse({ piece, from, to }: BoardRefusal): void {
    if (this.#over) return;
    const { words } = this.#exercise;
    const parts = { piece: words.pieces[piece.kind], from, to: to ?? '' };
    const turn = this.#exercise.turn;
    this.say(to === undefined ? words.notYours[turn] : fill(words.cannotGo, parts));
  }

  helped(): void {
    if (!this.#over) this.#missed = true;
  }

  giveUp(): void {
    const answers = this.#exercise.lines.filter(({ kind }) => kind === 'answer');
    const first = answers[0]?.start;
    this.#keep('shown');
    this.#end(
      this.#words.exercise.given,
      answers.map(({ element }) => element),
      first,
      false,
    );
  }

  walk(way: 'back' | 'on'): void {
    const spot = this.neighbour(way);
    if (spot !== undefined) this.look(spot);
  }

  neighbour(way: 'back' | 'on'): Spot | undefined {
    return way === 'back' ? this.#shown.spot?.parent : this.#shown.spot?.children[0];
  }

  look(spot: Spot): void {
    this.#shown.show(spot, [], true);
    this.#setSteps();
  }

  say(message: string, spokenWords = '', lines: readonly HTMLElement[] = []): void {
    this.#parts.talk.say({ message, spoken: spokenWords, lines });
  }

  get #words() {
    return this.#exercise.words;
  }

  /** The position in which the reader is to move; absent for the exercise's own. */
  #place(): Spot | undefined {
    return this.#walk.made.at(-1)?.spot;
  }

  /** Puts the board where the reader is to move. */
  #stand(glides: boolean): void {
    const place = this.#place();
    const key = place === undefined ? this.#exercise.key : (keyOf(place) ?? '');
    this.#legal = legalHere(key, this.#words.letters);
    this.#shown.show(place, this.#legal, glides);
    this.#parts.talk.setMade(madeInWords(this.#walk.made));
  }

  #right(step: Extract<MoveResult<SpotMove>, { kind: 'right' }>): void {
    const { move, reply, walk, also } = step;
    const { exercise } = this.#words;
    this.#shown.show(move.spot, [], true);
    this.#legal = [];
    if (reply === undefined) {
      this.#finish(step, move.spot);
      return;
    }
    this.say(also ? exercise.also : exercise.right);
    this.#parts.talk.setMade(madeInWords([...this.#walk.made, move]));
    const play = () => {
      if (this.#reply !== play) return;
      this.#reply = undefined;
      if (walk === undefined) {
        this.#finish(step, reply.spot);
        return;
      }
      this.#walk = walk;
      this.#stand(true);
      const { moves } = this.#exercise;
      const found = Math.ceil(walk.made.length / 2);
      const sentence = also ? exercise.alsoReply : exercise.reply;
      const n = String(found + 1);
      const count = String(found + movesToFind(walk, moves));
      this.say(
        fill(sentence, { move: numbered(reply.spot), n, count }),
        spoken(reply.spot, this.#words),
      );
    };
    this.#reply = play;
    setTimeout(play, pause);
  }

  #finish({ move, also }: Extract<MoveResult<SpotMove>, { kind: 'right' }>, reached: Spot): void {
    const { exercise } = this.#words;
    const first = this.#walk.made[0] ?? move;
    const { lines } = this.#exercise;
    const taken = lines.filter(({ start }) =>
      start.children.some((spot) => keyOf(spot) === first.id),
    );
    const answers = also ? [] : lines.filter(({ kind }) => kind === 'answer');
    this.#keep(this.#missed || also ? 'tries' : 'once');
    const isLong = this.#walk.made.length > 0;
    const message = also ? exercise.also : isLong ? exercise.whole : exercise.right;
    const shown = new Set([...taken, ...answers].map(({ element }) => element));
    this.#end(message, [...shown], reached, also);
  }

  #wrong({ spot }: SpotMove): void {
    this.#missed = true;
    const about = this.#exercise.lines.filter(
      ({ kind, start }) => kind === 'wrong' && start.children.includes(spot),
    );
    this.say(
      this.#words.exercise.wrong,
      '',
      about.map(({ element }) => element),
    );
    this.#shown.show(spot, this.#legal, true);
    this.#setSteps();
  }

  /** The exercise is over: what is left is to play it through, and to go on. */
  #end(
    message: string,
    lines: readonly HTMLElement[],
    at: Spot | undefined,
    isAlso: boolean,
  ): void {
    const { talk, controls } = this.#parts;
    const hadFocus = controls.contains(document.activeElement);
    this.#reply = undefined;
    this.#over = true;
    this.#seen ||= !isAlso;
    this.#missed = true;
    controls.hidden = true;
    this.#section.classList.add('answered');
    talk.setMade('');
    this.say(message, '', lines);
    this.#shown.show(at, [], this.#shown.spot !== at);
    this.#setSteps();
    const page = location.pathname.split('/').at(-1) ?? '';
    const next = nextInRound(courseOfPage(), page, this.#section.id);
    talk.setEnd({ next, all: exercisesPage, isAlso });
    if (hadFocus) talk.focus();
  }

  #setSteps(): void {
    const { spot } = this.#shown;
    this.#parts.talk.setSteps(spot?.parent !== undefined, (spot?.children.length ?? 0) > 0);
  }

  #keep(grade: ExerciseGrade): void {
    keepResult(courseOfPage(), this.#exercise.key, grade, new Date());
  }

  /** `14...`: the number of the move that is asked for. */
  #number(): string {
    const move = this.#walk.next[0]?.spot.move;
    return move === undefined ? '' : numberSign({ number: move.number, color: move.color });
  }
}

/** `13...Nb4 14.Qb3 a5` */
function madeInWords(made: readonly SpotMove[]): string {
  return made
    .map(({ spot }, index) =>
      index === 0 || spot.move?.color === 'white' ? numbered(spot) : spot.move?.san,
    )
    .join(' ');
}
