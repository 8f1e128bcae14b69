/** No text of 10,000 characters takes 50 ms, whatever it is made of. */
import { expect, test } from 'vitest';
import type { Part } from '../../engine/schema.ts';
import {
  readCommand,
  readField,
  readHazard,
  readLabel,
  readLine,
  readPlate,
  saysCant,
} from '../../engine/understand/index.ts';
import { field, note } from './parts.ts';
import { PROMPTS } from './prompts.ts';

const texts =
  `a| |1|1 |1/|1+|1,|.|>|-|'|±|herm |herm 1 |yes |no |none |not sure |clean |not clean |smoke detector |no smoke |got |stop |hand over |
45+5 µF |440/370 V |-5/+10% |½²|ol |1 cap |? |µ|\n|last year smoke |if smoke |r32 |leak |he fell |burnt |rla |17.9 rla |volts |208/230-1-60 |
8 lb 6 oz |model |high 446 psig |coil 24 |1S |l|O0|still climbing |climbs to ol |_ |case ol |121 / |Ж|😀|e\u0301|max fuse or |min circuit |1.5,|,5 |.5 |rla.8|5rla |
1 start cap |fan 1/|fuses |fuses .1 |two caps |is it |isnt |the |👍 `
    .split('|')
    .map((seed) => seed.repeat(Math.ceil(10_000 / seed.length)).slice(0, 10_000));
/** A print and a plate are read up to a length; the longest that are read. */
const plates = texts.map((text) => text.slice(0, 1_999));
const prints = texts.map((text) => text.slice(0, 599));

const plate: Part[] = ['rla', 'lra', 'fla', 'mca', 'mop'].map((key) => field(key, 'A', { optional: true }));
const shared: Part[] = ['f1', 'f2', 'f3'].map((key) => field(key, 'Ω', { words: ['fuses', 'fan'] }));
const [sections, , , open, symptoms, lock, wires] = PROMPTS;
const proving: Part[] = [...(lock ?? []), ...(sections ?? []), ...shared];
const looked: Part[] = [...(open ?? []), note];
const readers: [string, readonly string[], (text: string) => unknown][] = [
  ['a reading', texts, (text) => readField(text, field('herm', 'µF'))],
  ['a print', [...texts, ...prints], (text) => readLabel(text, { tolerance: '6' })],
  ['a print of a start part', prints, (text) => readLabel(text, { tolerance: '6', start: true })],
  ['a plate', [...texts, ...plates], readPlate],
  ['figures of a plate', plates, (text) => readLine(text, plate)],
  ['a yes and a line of readings, some of one name', texts, (text) => readLine(text, proving)],
  ['a list', texts, (text) => readLine(text, symptoms ?? [])],
  ['an act', texts.slice(0, 24), (text) => readLine(text, wires ?? [])],
  ['a list, a count, a print and a note', texts, (text) => readLine(text, looked)],
  ['a command', texts, readCommand],
  ['danger', texts, (text) => readHazard(text, ['clean'])],
  ['“can’t”', texts, saysCant],
];

test.each(readers)('%s', (_, tried, read) => {
  for (const text of tried) {
    let least = Number.POSITIVE_INFINITY;
    // Time of this process, and the best of six: other work on the machine is no property of the reader.
    for (let n = 0; n < 6 && least >= 50; n++) {
      const start = process.cpuUsage();
      read(text);
      const { user, system } = process.cpuUsage(start);
      least = Math.min(least, (user + system) / 1000);
    }
    expect(least, `${JSON.stringify(text.slice(0, 16))} × ${text.length}`).toBeLessThan(50);
  }
});
