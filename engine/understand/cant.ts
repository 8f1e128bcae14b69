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
  no capacitance range, no capacitance, no capacitance meter, no capacitor meter, no cap mode, no cap range, no cap setting, no uf setting, no such range,
  meter doesnt do, meter does not do, meter dont do, meter only does, meter only has, meter has no cap, meter has no capacitance, meter has no uf, meter has no mfd, meter doesnt have,
  my meter doesnt do, my meter doesnt have, my meter only does, my meter only has, my meter has no cap, my meter has no capacitance, my meter has no uf, no leads, no label, no print, no plate, no nameplate, no diagram, no wiring diagram, no schematic, diagram unreadable, diagram is unreadable, diagram gone, diagram is gone, diagram faded, diagram is faded, no tag on it, nothing printed, unreadable, plate unreadable, plate is unreadable, label unreadable, label is unreadable, print unreadable, print is unreadable,
  nameplate unreadable, nameplate is unreadable, plate faded, plate is faded, label faded, label is faded, print faded, print is faded,
  none on the truck, not on the truck, nothing on the truck, no part on the truck, no part on truck, none on truck, not on truck, none in the van, not in the van, dont carry, no such part,
  illegible, not readable, not legible, print gone, print is gone, plate gone, plate is gone, label gone, label is gone, sticker gone,
  sticker is gone, gone, faded, sun faded, worn off, all worn off, painted over, no numbers, no battery, no adapter, not sure, unsure, dont know, do not know, didnt know, idk, dunno, no idea, no clue,
  not possible, impossible, hard to say, hard to tell, missing the tool, forgot my, left my, my meter is dead, meter is dead,
  meter died, meter broke, no puedo, no se, no tengo, ni idea, not measurable, out of reach`);
const HEADS = new RegExp(`^(?:(?:${BEFORE}) )?(?:${SAYING}) `, 'u');
