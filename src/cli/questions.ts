/** Questions that an option, somebody at the terminal or a default answers, in this order. */
import { begin } from '../wording/en/begin.ts';
import type { Dialogue, Environment, Values } from './environment.ts';

const { mistakes } = begin;

/** An answer as it is used, or what was expected instead. */
export type Checked<T> = { readonly value: T } | { readonly expected: string };

export interface Question<T> {
  /** The option that answers it. */
  readonly option: string;
  readonly words: string;
  /** What Enter takes, and what is taken where nobody can be asked. */
  readonly initial?: string;
  readonly check: (typed: string) => Checked<T>;
}

/** What went wrong with options, or is needed where nobody can be asked. */
export interface Unanswered {
  readonly mistakes: readonly string[];
  readonly needed: readonly { readonly option: string; readonly words: string }[];
}

export interface Questioner {
  /** Whether somebody can be asked. */
  readonly isAsked: boolean;
  /** Undefined where it stays unanswered, which `unanswered` then says. Rejects with a stop. */
  readonly ask: <T>(question: Question<T>) => Promise<T | undefined>;
  /** Says something to whoever is asked, and to nobody else. */
  readonly tell: (...lines: readonly string[]) => void;
  readonly unanswered: () => Unanswered;
  readonly close: () => void;
}

const STOPPED = 'Stopped';

/** Whether an error is somebody's wish to stop. */
export const isStop = (error: unknown): boolean => error instanceof Error && error.name === STOPPED;

const stop = (): Error => Object.assign(new Error('stopped at a question'), { name: STOPPED });

/** A questioner over the options and, without `--yes`, the terminal. */
export const questionerFor = async (values: Values, edge: Environment): Promise<Questioner> => {
  const dialogue: Dialogue | undefined = values.yes === true ? undefined : await edge.dialogue?.();
  const wrong: string[] = [];
  const needed: { option: string; words: string }[] = [];
  const tell = (...lines: readonly string[]): void => {
    if (dialogue) edge.stderr.write(`${lines.join('\n')}\n`);
  };

  const ask = async <T>({ option, words, initial, check }: Question<T>): Promise<T | undefined> => {
    const given = values[option];
    if (typeof given === 'string') {
      const answer = check(given);
      if ('value' in answer) return answer.value;
      wrong.push(mistakes.wrong(option, given, answer.expected));
      return undefined;
    }
    if (!dialogue) {
      const answer = initial === undefined ? undefined : check(initial);
      if (answer && 'value' in answer) return answer.value;
      needed.push({ option, words });
      return undefined;
    }
    const prompt = `${words}${initial ? ` [${initial}]` : ''} `;
    for (;;) {
      const typed = (await dialogue.ask(prompt))?.trim();
      if (typed === undefined) throw stop();
      const answer = check(typed === '' && initial !== undefined ? initial : typed);
      if ('value' in answer) return answer.value;
      tell(
        mistakes
          .again(typed === '' ? '' : `“${typed}”`, answer.expected)
          .replace('Unexpected ,', 'Unexpected empty line,'),
      );
    }
  };
  return {
    isAsked: dialogue !== undefined,
    ask,
    tell,
    unanswered: () => ({ mistakes: wrong, needed }),
    close: () => dialogue?.close(),
  };
};
