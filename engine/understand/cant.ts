/** "I can't measure that", "no such tool", "not sure": what leads on without an answer. */
import { bare, fold, lower } from './fold.ts';

/**
 * Whether a text that answers nothing says that it can't be answered here. Only from its first words on, so that "the
 * fan can't turn" stays an observation. Never throws.
 */
export function saysCant(text: string): boolean {
  const said = bare(lower(fold(text.slice(0, LONGEST_HEAD))))
    .replaceAll("'", '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return HEADS.test(`${said} `);
}

const LONGEST_HEAD = 80;
const phrases = (text: string): string => text.trim().split(/,\s*/).join('|');
const BEFORE = phrases('sorry, sorry i, no i, i, we, honestly, ok i, well i, no sorry, im, i am, we are');
const SAYING =
  phrases(`cant, cannot, can not, could not, couldnt, unable, not able, wont let me, wont reach, dont have, do not have,
  havent got, have no, have not got, got no, no such tool, no tool, no tools, no meter, no such meter, no resistor, no signal, no probe,
  no access, no way to, no clamp, no amp clamp, no clamp meter, no amp meter, no cap meter, no ohm meter, no thermometer, no temp probe,
  no capacitance range, no such range, no leads, no label, no print, no plate, no nameplate, no tag on it, nothing printed, unreadable,
  illegible, not readable, not legible, print gone, print is gone, plate gone, plate is gone, label gone, label is gone, sticker gone,
  sticker is gone, gone, faded, sun faded, worn off, all worn off, painted over, no numbers, no battery, no adapter, not sure, unsure, dont know, do not know, didnt know, idk, dunno, no idea, no clue,
  not possible, impossible, hard to say, hard to tell, missing the tool, forgot my, left my, my meter is dead, meter is dead,
  meter died, meter broke, no puedo, no se, no tengo, ni idea, not measurable, out of reach`);
const HEADS = new RegExp(`^(?:(?:${BEFORE}) )?(?:${SAYING}) `, 'u');
