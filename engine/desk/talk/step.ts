/** One step of a conversation as data: it can be played, left out, and printed. */
import type { GivenParts } from '../../schema.ts';

/** What a person sends. */
export type What =
  | { readonly say: string }
  | { readonly tap: GivenParts }
  /** The standing answer at this place gets other parts, or is taken back. */
  | { readonly change: string; readonly to: GivenParts; readonly reason?: string }
  | { readonly takeBack: string; readonly reason?: string };

export interface Saying {
  readonly by: string;
  readonly what: What;
  /** So many questions back is the one that it answers: typed late. −1: one that nobody has asked yet. */
  readonly late?: number;
  readonly offline?: true;
  /** So many milliseconds behind is the clock of their device. */
  readonly behind?: number;
  readonly means?: 'danger' | 'stop';
}
/**
 * `lost`: the process dies before anything is kept; `unheard`: after, and before the answer is out. Both are sent again
 * by the same id to the process that comes after it, but for `given-up`. `again`: sent again though it was answered.
 * `restart`: the process dies between two replies.
 */
export type Trouble = 'lost' | 'unheard' | 'given-up' | 'again' | 'restart';

export interface Step {
  /** Milliseconds that pass before it. */
  readonly gap: number;
  /** Milliseconds by which somebody sets the machine's clock, before or back. */
  readonly set?: number;
  readonly saying: Saying;
  /** Which of two processes hears it. */
  readonly via: 0 | 1;
  /** Somebody else answers at the same moment, through the other process. */
  readonly beside?: Saying;
  readonly trouble?: Trouble;
  /** An earlier reply, so many back, is delivered once more before it. */
  readonly echo?: number;
}
/** Who begins, with what. */
export interface Opening {
  readonly assign: string;
  readonly title: string;
  /** Minutes after which a proof is too old in this shop, and whether a tag is allowed where no lock fits. */
  readonly minutes: number | null;
  readonly tag: boolean;
}

export function told({ gap, set, saying, beside, trouble, echo }: Step): string {
  const minutes = `+${(gap / 60_000).toFixed(gap % 60_000 === 0 ? 0 : 1)} min`;
  const clock = set === undefined ? '' : `, clock set ${set < 0 ? 'back' : 'on'} ${Math.abs(set) / 60_000} min`;
  const more = [
    trouble,
    echo === undefined ? undefined : `after the reply ${echo} back came again`,
    beside ? `at once ${said(beside)}` : undefined,
  ].filter((x) => x !== undefined);
  return `${minutes}${clock} ${said(saying)}${more.length > 0 ? ` (${more.join('; ')})` : ''}`;
}
function said({ by, what, late, offline, behind }: Saying): string {
  const words =
    'say' in what
      ? what.say
      : 'tap' in what
        ? `taps ${JSON.stringify(what.tap)}`
        : 'to' in what
          ? `changes ${what.change} to ${JSON.stringify(what.to)}`
          : `takes back ${what.takeBack}`;
  const marks = [
    late === undefined ? [] : late < 0 ? 'ahead of the question' : `${late} questions late`,
    offline ? 'without contact' : [],
    behind === undefined ? [] : `device ${behind / 60_000} min behind`,
  ].flat();
  return `${by}: ${words}${marks.length > 0 ? ` [${marks.join(', ')}]` : ''}`;
}
