/** The settings that the code reads and those that the README lists are the same. */
import { describe, expect, test } from 'vitest';
import { readConfig } from '../../web-chat/server/config.ts';
import { present, read } from './source.ts';

const NAME = /\b(?:NOCOOL_[A-Z_]+|DATABASE_URL)\b/g;
/** Where the tests put their own platform in place of the real one; of no use to anybody else. */
const FOR_TESTS = ['NOCOOL_SLACK_API'];

const inCode = (): string[] => {
  const sources = present().filter((path) => /^(engine|bot|web-chat|seeds)\/.*\.tsx?$/.test(path));
  const found = new Set(sources.flatMap((path) => read(path).text.match(NAME) ?? []));
  return [...found].filter((name) => !FOR_TESTS.includes(name)).sort();
};
/** Rows of the table under the heading Settings. */
const inReadme = (page: string): string[] => {
  const [, section = ''] = page.split('\n## Settings\n');
  const rows = section.split('\n## ')[0]?.match(/^\| `[^`]+` \|/gm) ?? [];
  return rows.map((row) => row.replace(/[|` ]/g, '')).sort();
};

describe('settings', () => {
  test('each that is read is listed, and each that is listed is read', () => {
    expect(inCode().length).toBeGreaterThan(10);
    expect(inReadme(read('README.md').text)).toEqual(inCode());
  });
  test('a row too many or too few would show', () => {
    expect(inReadme('x\n## Settings\n\n| name |\n|---|\n| `NOCOOL_A` | b |\n\n## More\n| `NOCOOL_C` | d |')).toEqual([
      'NOCOOL_A',
    ]);
  });
  test.each([
    ['NOCOOL_PORT', '70000', 'a port from 0 to 65535'],
    ['NOCOOL_RATE', '-1', 'a number of requests a minute'],
    ['NOCOOL_PROXIES', 'many', 'how many proxies'],
    ['NOCOOL_ZONE', 'Mars/Olympus', 'a time zone such as'],
    ['NOCOOL_URL', 'nocool', 'an address such as https'],
    ['NOCOOL_DEMO', 'maybe', 'yes or no'],
    ['NOCOOL_LOG', 'loud', 'fatal, error'],
  ])('%s=%s is refused in one line that names it', (name, value, takes) => {
    const read = readConfig({ [name]: value });
    expect('wrong' in read && read.wrong).toEqual([
      expect.stringContaining(`${name} is "${value}"; it takes ${takes}`),
    ]);
  });
  test('what is wrong with a secret is said without it', () => {
    for (const [name, value] of [
      ['NOCOOL_METRICS_TOKEN', 'short-secret'],
      ['DATABASE_URL', 'mysql://u:hush@h/d'],
    ] as const) {
      const read = readConfig({ [name]: value });
      expect(JSON.stringify(read)).toContain(name);
      expect(JSON.stringify(read)).not.toMatch(/short-secret|hush/);
    }
  });
  test('one that is misspelt is not passed over', () => {
    expect(readConfig({ NOCOOL_PROT: '1' })).toMatchObject({
      wrong: [expect.stringContaining('NOCOOL_PROT is no setting')],
    });
  });
});
