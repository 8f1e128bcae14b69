/** Lines of a stream, parted by line feeds alone: text in JSON may hold any other mark. */
import type { Readable } from 'node:stream';

export class Lines {
  readonly #lines: AsyncGenerator<string>;
  /** Asked for, not yet handed out. */
  #asked: Promise<IteratorResult<string>> | null = null;

  constructor(input: Readable) {
    this.#lines = linesOf(input);
  }

  /** The next line; null at the end. */
  async next(): Promise<string | null> {
    const asked = this.#ask();
    const { done, value } = await asked;
    this.#asked = null;
    return done ? null : value;
  }

  /** The next line, left where it is; null where none has come within this time, or at the end. */
  async peek(milliseconds: number): Promise<string | null> {
    const asked = this.#ask();
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<null>((resolve) => {
      timer = setTimeout(() => resolve(null), milliseconds);
    });
    const first = await Promise.race([asked, late]);
    clearTimeout(timer);
    return first === null || first.done ? null : first.value;
  }

  #ask(): Promise<IteratorResult<string>> {
    this.#asked ??= this.#lines.next();
    return this.#asked;
  }
}

async function* linesOf(input: Readable): AsyncGenerator<string> {
  let rest = '';
  for await (const chunk of input.setEncoding('utf8')) {
    const pieces = `${rest}${String(chunk)}`.split('\n');
    rest = pieces.pop() ?? '';
    for (const piece of pieces) yield piece.replace(/\r$/, '');
  }
  if (rest !== '') yield rest;
}
