/** What is no exported job is told in one line, whatever it is. */
import { describe, expect, test } from 'vitest';
import { LARGEST, readJobFile, writeJobFile } from '../../engine/report/file.ts';
import { plain } from '../../engine/report/line.ts';
import { createVerifier } from '../../engine/report/verify.ts';
import { record } from '../replay/recorder.ts';

const good = await record('weak-fan-section-replaced-and-proven', null);
const read = (text: string | Uint8Array) => readJobFile(typeof text === 'string' ? Buffer.from(text) : text);
const wrong = (text: string | Uint8Array): string => {
  const found = read(text);
  return 'wrong' in found ? found.wrong : 'a job';
};
const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;

test('written and read again it is the same to the byte', () => {
  const file = read(good);
  expect('wrong' in file ? file.wrong : writeJobFile(file)).toBe(good);
});
test('laid out anew by another program it is still the same job', () => {
  expect(read(JSON.stringify(JSON.parse(good), null, 4))).toEqual(read(good));
});

describe('refused', () => {
  test.each<[string, string | Uint8Array, RegExp]>([
    ['nothing', '', /^empty$/],
    ['words', 'hello', /^not JSON/],
    ['half a file', good.slice(0, 900), /^not JSON/],
    ['a number', '7', /^not an exported job \(the whole\)/],
    ['null', 'null', /^not an exported job/],
    ['a list', '[]', /^not an exported job/],
    ['another thing', '{"nocool":"shop"}', /^not an exported job \(/],
    ['a version to come', good.replace('"v":1', '"v":2'), /^not an exported job \(v\)/],
    ['something more', good.replace('{"nocool"', '{"more":1,"nocool"'), /^not an exported job/],
    ['no bytes of a text', Uint8Array.of(0x7b, 0xff, 0x7d), /^not UTF-8/],
    ['another encoding', Buffer.from(good, 'utf16le'), /^not (UTF-8|JSON)/],
    ['nested without end', deep, /^not an exported job/],
    ['nested inside', good.replace('"entries":[', `"entries":[${deep},`), /^a job$/],
    ['too large', new Uint8Array(LARGEST + 1), /^larger than 64/],
    ['a name twice', good.replace('"kind":"opened"', '"kind":"noted","kind":"opened"'), /twice/],
    [
      'a name twice, written in two ways',
      good.replace('"kind":"opened"', '"\\u006bind":"noted","kind":"opened"'),
      /twice/,
    ],
  ])('%s', (_, text, why) => {
    expect(wrong(text)).toMatch(why);
  });
});

test.each([['{"nocool":"job"}'], ['[[[['], [good.replace('"entries":[', `"entries":[${deep},`)]])(
  'verify has a word for it: %#',
  (text) => {
    const { troubles } = createVerifier([], []).verify(Buffer.from(text));
    expect(['no job file', 'altered']).toContain(troubles[0]?.word);
  },
);

test('a line for a terminal carries nothing that moves it', () => {
  expect(plain('a\u001b[2Jb\u202ec\nd µF')).toBe('a\uFFFD[2Jb\uFFFDc\uFFFDd µF');
});
