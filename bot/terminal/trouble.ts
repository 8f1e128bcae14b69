/** What the desk throws, told apart: what one person may not do, and what the record can't keep. */
import { NoRight, NotFound, NotKept } from '../../engine/desk/index.ts';
import { EXIT } from './options.ts';

export interface Trouble {
  readonly text: string;
  /** The exit code, should the run end on it. */
  readonly code: number;
}

/** Trouble that ends nothing: it is said, and the next line is taken. A bug is thrown on. */
export function troubleOf(error: unknown): Trouble {
  if (error instanceof NotKept) return { text: error.message, code: EXIT.notKept };
  if (error instanceof NotFound || error instanceof NoRight) return { text: error.message, code: EXIT.ended };
  throw error;
}
