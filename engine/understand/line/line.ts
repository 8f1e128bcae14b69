/**
 * One typed message, spread over the parts of a prompt. Fields and labels come out as typed, to be read by `readField`
 * and `readLabel`; choices as option ids. What is not understood comes back in `unread`, in the words typed.
 */
import { keepLatest } from '../../latest.ts';
import type { GivenParts, Part } from '../../schema.ts';
import { claimChoices } from './choices.ts';
import { claimFields } from './fields.ts';
import { claimLabel } from './label.ts';
import { Lexicon } from './lexicon.ts';
import { claimPlate } from './plate.ts';
import { Line } from './state.ts';

export interface LineReading {
  given: GivenParts;
  unread: string[];
}

/** Spreads `text` over `parts`. Never throws, never loses a word, gives nothing that can be read in two ways. */
export function readLine(text: string, parts: readonly Part[]): LineReading {
  const trimmed = text.trim();
  if (trimmed === '') return { given: {}, unread: [] };
  const asked = parts.filter(({ kind }) => kind !== 'photo');
  const [only, ...more] = asked;
  if (only && more.length === 0 && (only.kind === 'label' || only.kind === 'note'))
    return { given: { [only.key]: trimmed }, unread: [] };
  const line = new Line(trimmed, asked, lexiconOf(asked));
  const given: GivenParts = {
    ...claimLabel(line),
    ...claimPlate(line),
    ...(line.lexicon.fields.length > 0 ? claimFields(line) : {}),
    ...claimChoices(line),
  };
  const unread = line.unread();
  const note = asked.find(({ kind }) => kind === 'note');
  if (!note) return { given, unread };
  return noted(note.key, given, unread, line.lexicon.fields.length > 0);
}

/**
 * Made once for a question, which costs more than reading a line by it. Told apart by what is asked: a question is made
 * anew at every turn, and what it remembers has no part in what a word means.
 */
const lexicons = new Map<string, Lexicon>();
/** More than all pages have questions; those with a list of what a truck carries come and go. */
const KEPT = 1_000;
function lexiconOf(asked: readonly Part[]): Lexicon {
  const key = JSON.stringify(asked, (name, value) => (name === 'remembered' ? undefined : value));
  const lexicon = lexicons.get(key) ?? new Lexicon(asked);
  keepLatest(lexicons, key, lexicon, KEPT);
  return lexicon;
}

/** The rest is the note; numbers stay unread where numbers are asked, so that they are asked for and not buried. */
function noted(key: string, given: GivenParts, unread: readonly string[], numbersAsked: boolean): LineReading {
  const kept = unread.filter((piece) => numbersAsked && /\d/.test(piece));
  const words = unread.filter((piece) => !kept.includes(piece));
  return { given: words.length > 0 ? { ...given, [key]: words.join(', ') } : given, unread: kept };
}
