/** Questions on a terminal, a line each: nothing moves, so that a screen reader and a log read what stands there. */
import { createInterface } from 'node:readline';
import type { Dialogue } from './environment.ts';

/** A dialogue over a terminal, or over anything that gives lines. */
export const openDialogue = (
  input: NodeJS.ReadableStream,
  output: NodeJS.WritableStream & { readonly isTTY?: boolean },
): Dialogue => {
  const lines = createInterface({ input, output, terminal: output.isTTY === true });
  // Lines that are pasted at once come before they are asked for.
  const waiting: string[] = [];
  let isOver = false;
  let answer: ((line: string | undefined) => void) | undefined;
  const give = (line: string | undefined): void => {
    const take = answer;
    answer = undefined;
    if (take) take(line);
    else if (line !== undefined) waiting.push(line);
  };
  lines.on('line', give);
  lines.on('SIGINT', () => {
    waiting.length = 0;
    lines.close();
  });
  lines.on('close', () => {
    isOver = true;
    give(undefined);
  });
  return {
    ask: (question) => {
      const line = waiting.shift();
      if (line !== undefined || isOver) {
        output.write(`${question}${line ?? ''}\n`);
        return Promise.resolve(line);
      }
      lines.setPrompt(question);
      lines.prompt();
      return new Promise((resolve) => {
        answer = resolve;
      });
    },
    close: () => lines.close(),
  };
};
