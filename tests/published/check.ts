/**
 * One check of ours against what somebody outside the project published. Each is a test of its own, and `npm run checks`
 * prints all of them as one table.
 */
import { describe, expect, test } from 'vitest';

/**
 * Where a published figure stands. V: the law's, standard's or official page's text was read. V2: read in a secondary
 * source that quotes it. PHYS: physics or arithmetic. CP: common practice, no single source. CHOICE: our own setting.
 * M: from memory; such a check is listed apart and counts for nothing.
 */
export type Status = 'V' | 'V2' | 'PHYS' | 'CP' | 'CHOICE' | 'M';

/** Anything that prints as a decimal number or a word: a number, a string, an Exact. */
type Shown = number | string | { toString(): string };

export interface Check {
  /** What is compared, in the words of the trade. */
  readonly what: string;
  readonly input: string;
  /** As printed, digit for digit; a word where the published answer is a word. */
  readonly published: string;
  readonly ours: () => Shown | Promise<Shown>;
  /** How far ours may be off, in `unit`. Without it: half a step of the last digit printed. Words must be equal. */
  readonly within?: number;
  /** '' for words and shares. */
  readonly unit: string;
  /** The standard, page or book; "arithmetic"; "common practice"; "value from memory". */
  readonly source: string;
  readonly status: Status;
  /** A figure known to be wrong: ours must not agree with it. */
  readonly wrong?: true;
  /** An independent program asked the same in the same test; it must agree with ours. */
  readonly oracle?: { readonly name: string; readonly says: () => Shown | Promise<Shown>; readonly within: number };
}

/** What a check leaves for the table. */
export interface CheckRow {
  readonly subject: string;
  readonly what: string;
  readonly input: string;
  readonly published: string;
  readonly ours: string;
  readonly difference: string;
  readonly unit: string;
  readonly source: string;
  readonly status: Status;
  readonly wrong: boolean;
  readonly oracle: string | undefined;
}

declare module 'vitest' {
  interface TaskMeta {
    check?: CheckRow;
  }
}

const isNumber = (text: string): boolean => /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text);

/** Half a step of the last printed digit; a hair more, so that a figure exactly between two prints isn't a miss. */
function halfStep(published: string): number {
  const [mantissa = '', exponent = '0'] = published.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9);
}

const agrees = (ours: string, published: string, within: number): boolean =>
  isNumber(published) ? isNumber(ours) && Math.abs(Number(ours) - Number(published)) <= within : ours === published;

/** Declares the checks of one subject. Every check is a test; a figure known to be wrong must disagree. */
export function checks(subject: string, all: readonly Check[]): void {
  describe(subject, () => {
    test.for(all.map((check) => ({ name: `${check.what}: ${check.input}`, check })))(
      '$name',
      async ({ check }, { task }) => {
        const ours = String(await check.ours());
        const difference =
          isNumber(check.published) && isNumber(ours) ? Number(ours) - Number(check.published) : undefined;
        task.meta.check = {
          subject,
          ...{
            what: check.what,
            input: check.input,
            published: check.published,
            unit: check.unit,
            source: check.source,
          },
          ...{ ours, status: check.status, wrong: check.wrong ?? false, oracle: check.oracle?.name },
          difference: difference === undefined ? '' : difference.toPrecision(2),
        };
        const within = check.within ?? halfStep(check.published);
        const said = `${check.what}, ${check.input}: ours ${ours}, published ${check.published} (${check.source})`;
        expect(agrees(ours, check.published, within), said).toBe(!check.wrong);
        if (!check.oracle) return;
        const theirs = String(await check.oracle.says());
        expect(isNumber(theirs), `${check.oracle.name} says ${theirs}`).toBe(true);
        expect(Math.abs(Number(ours) - Number(theirs)), `${said}; ${check.oracle.name}: ${theirs}`).toBeLessThanOrEqual(
          check.oracle.within,
        );
      },
    );
  });
}
