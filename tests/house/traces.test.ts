import { describe, expect, test } from 'vitest';
import { committed, read, type Source } from './source.ts';

/** Folders that exist on one machine only. Pieced together, so that this file doesn't carry what it looks for. */
const folders = ['work', 'root', 'home', 'Users', 'tmp/scratch'].map((name) => `/${name}/`);
const MACHINE = new RegExp(`(?<![\\w.~/-])(${folders.join('|')})|[A-Z]:\\\\\\\\?Users|${['..', 'shared'].join('/')}`);
/** The lock file carries no host: a registry is the reader's own choice. */
const REGISTRY = /"resolved":\s*"https?:/;
const LEFT_OVER = new RegExp(`\\b(${['TO', 'FIX', 'X'].map((a, i) => a + ['DO', 'ME', 'XX'][i]).join('|')})\\b`);

const tracesIn = ({ path, text }: Source): string[] =>
  [MACHINE, REGISTRY, ...(/\.(ts|tsx|js|css)$/.test(path) ? [LEFT_OVER] : [])].flatMap((pattern) => {
    const found = pattern.exec(text);
    return found ? [`${path}: ${found[0]}`] : [];
  });

describe('nothing committed leads back to the machine it was written on', () => {
  test('no path of a machine, no registry host, nothing left to do', () => {
    const texts = committed().filter((path) => !/\.(png|jpe?g|woff2?|ttf|pdf|sqlite)$/.test(path));
    expect(texts.length).toBeGreaterThan(10);
    expect(texts.map(read).flatMap(tracesIn)).toEqual([]);
  });

  test.each([
    ['README.md', `see ${folders[0]}notes`],
    ['engine/a.ts', `// from ${['..', 'shared', 'x.md'].join('/')}`],
    ['bot/a.ts', `open('${folders[2]}me/a')`],
    ['package-lock.json', `"resolved":${' '}"https://registry.example/a.tgz"`],
    ['engine/a.ts', `// ${'TO'}${'DO'} later`],
  ])('caught in %s: %s', (path, text) => {
    expect(tracesIn({ path, text })).toHaveLength(1);
  });

  test.each([
    ['README.md', 'open http://localhost:8080/work/today'],
    ['.ci/run', 'rm -rf ./home/a'],
  ])('left alone in %s: %s', (path, text) => {
    expect(tracesIn({ path, text })).toEqual([]);
  });
});
