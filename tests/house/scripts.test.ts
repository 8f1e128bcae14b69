import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { present, ROOT, read } from './source.ts';

const scripts: Record<string, string> = JSON.parse(read('package.json').text).scripts;

/** Compiled files that a script starts, as the sources they come from. */
const sourcesStarted = (script: string): string[] =>
  [...script.matchAll(/\bnode dist\/(\S+)\.js\b/g)].map(([, path]) => `${path}.ts`);

describe('scripts', () => {
  test('each that starts something of ours starts a source that exists', () => {
    const here = new Set(present());
    const started = Object.values(scripts).flatMap(sourcesStarted);
    expect(started.length).toBeGreaterThan(0);
    expect(started.filter((path) => !here.has(path))).toEqual([]);
    expect(here.has(sourcesStarted('node dist/bot/nowhere/main.js')[0] ?? '')).toBe(false);
  });

  test('CI runs every part of the check', () => {
    const ci = readFileSync(`${ROOT}.ci/run`, 'utf8');
    const parts = (scripts.check ?? '').split('&&').map((part) => part.trim());
    expect(parts.length).toBeGreaterThan(4);
    expect(parts.filter((part) => !ci.includes(part))).toEqual([]);
  });
});
