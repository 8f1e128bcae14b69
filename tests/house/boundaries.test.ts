import { describe, expect, test } from 'vitest';
import { effectsOf } from './effects.ts';
import { flowIds, flowWordsIn, limitFigures } from './flow-words.ts';
import { read, type Source, sources } from './source.ts';
import { forbiddenImports, PURE_LIBRARIES, zoneOf } from './who-may-import-whom.ts';

const all = sources();
const doors = all.filter(({ path }) => /^(bot|web-chat)\//.test(path));
const flows = all.filter(({ path }) => path.startsWith('flows/'));
const ids = flowIds(flows, [read('engine/schema.ts'), read('engine/desk/types.ts')]);
const limits = flows.filter(({ path }) => path === 'flows/limits.ts').flatMap(limitFigures);

const at = (path: string, text: string): Source => ({ path, text });
const imports = (path: string, specifier: string) => forbiddenImports(at(path, `import { x } from '${specifier}';`));
const importsType = (path: string, specifier: string) =>
  forbiddenImports(at(path, `import type { x } from '${specifier}';`));

describe('who may import whom', () => {
  test('every source keeps the rules', () => {
    expect(all.length).toBeGreaterThan(0);
    expect(all.flatMap(forbiddenImports)).toEqual([]);
  });

  test.each([
    ['engine/calc/a.ts', 'node:fs'],
    ['engine/calc/a.ts', 'fs'],
    ['engine/calc/a.ts', 'preact'],
    ['engine/prompt.ts', './desk/index.ts'],
    ['engine/picture/leads.ts', '../store/port.ts'],
    ['engine/replay.ts', 'xstate'],
    ['engine/desk/open.ts', 'fastify'],
    ['engine/desk/open.ts', '../../web-chat/server/routes.ts'],
    ['engine/desk/open.ts', '../../flows/capacitor.ts'],
    ['engine/store/sqlite.ts', '../desk/index.ts'],
    ['flows/capacitor.ts', '../engine/schema.ts'],
    ['flows/capacitor.ts', 'decimal.js'],
    ['bot/slack/render.ts', '../../web-chat/page/chat.tsx'],
    ['bot/slack/render.ts', '../terminal/render.ts'],
    ['bot/terminal/render.ts', 'xstate'],
    ['bot/terminal/render.ts', '../../engine/prompt.ts'],
    ['bot/terminal/render.ts', '../../engine/store/index.ts'],
    ['bot/terminal/main.ts', '../../engine/store/sqlite.ts'],
    ['web-chat/server/routes.ts', '../../bot/terminal/parse.ts'],
    ['web-chat/server/routes.ts', '../../flows/capacitor.ts'],
    ['web-chat/page/chat.tsx', 'node:path'],
    ['web-chat/page/chat.tsx', '../../engine/desk/index.ts'],
    ['seeds/index.ts', '../web-chat/server/routes.ts'],
    ['elsewhere/a.ts', './b.ts'],
  ])('%s may not import %s', (path, specifier) => {
    expect(imports(path, specifier)).toHaveLength(1);
  });

  test.each([
    `export * from 'node:fs';`,
    `export { readFileSync } from 'node:fs';`,
    `import 'node:fs';`,
    `const fs = await import('node:fs');`,
    `const name = 'fs'; const fs = await import('node:' + name);`,
    `type Fs = import('node:fs').Stats;`,
    `import type { Stats } from 'node:fs';`,
  ])('no spelling hides an import: %s', (text) => {
    expect(forbiddenImports(at('engine/calc/a.ts', text))).toHaveLength(1);
  });

  test.each([
    ['engine/compile.ts', 'xstate'],
    ['engine/schema.ts', 'zod/mini'],
    ['engine/hash.ts', '@noble/hashes/sha2.js'],
    ['engine/store/sqlite.ts', 'better-sqlite3'],
    ['flows/capacitor.ts', './limits.ts'],
    ['flows/capacitor.ts', '../engine/vocabulary.ts'],
    ['bot/terminal/run.ts', '../../engine/store/index.ts'],
    ['web-chat/server/main.ts', '../../engine/store/index.ts'],
    ['web-chat/server/routes.ts', '../../engine/desk/index.ts'],
  ])('%s may import %s', (path, specifier) => {
    expect(imports(path, specifier)).toEqual([]);
  });

  test('types of the desk may cross where its code may not', () => {
    expect(importsType('web-chat/page/chat.tsx', '../../engine/desk/types.ts')).toEqual([]);
    expect(imports('web-chat/page/chat.tsx', '../../engine/desk/types.ts')).toHaveLength(1);
  });

  test('a library that is not on the list is refused in the pure engine, each that is on it is taken', () => {
    expect(imports('engine/calc/a.ts', 'left-pad')).toHaveLength(1);
    for (const library of PURE_LIBRARIES) expect(imports('engine/compile.ts', library)).toEqual([]);
  });
});

describe('the pure engine has no effects', () => {
  test('no source reaches a clock, chance, a machine or a person', () => {
    const pure = all.filter(({ path }) => zoneOf(path) === 'engine' || zoneOf(path) === 'flows');
    expect(pure.length).toBeGreaterThan(0);
    expect(pure.flatMap(effectsOf)).toEqual([]);
  });

  test.each([
    'const now = Date.now();',
    'const now = new Date();',
    'const now = Date();',
    'const { now } = Date; now();',
    'const x = Math.random();',
    'const { random } = Math;',
    'const home = process.env.HOME;',
    'const id = globalThis.crypto.randomUUID();',
    'const id = crypto.randomUUID();',
    'const w = { process };',
    'document.title = "x";',
    'console.log(1);',
    'setTimeout(() => 1, 5);',
    'const words = (1.5).toLocaleString();',
    'names.sort((a, b) => a.localeCompare(b));',
    'const hour = new Date(at).getHours();',
    'const here = import.meta.url;',
    'const a = (process as unknown as string);',
  ])('caught: %s', (text) => {
    expect(effectsOf(at('engine/calc/a.ts', text)).length).toBeGreaterThan(0);
  });

  test.each([
    'const at = new Date(said).toISOString();',
    'const ms = Date.parse(at); const utc = Date.UTC(2020, 1);',
    'const up = Math.ceil(x); const pow = Math.max(1, 2);',
    'const process = (x: number) => x; process(1);',
    'const o = { process: 1, document: 2 }; o.process;',
    'type Now = Date; interface Window { self: number }',
    'function f(location: string) { return location; }',
  ])('left alone: %s', (text) => {
    expect(effectsOf(at('engine/calc/a.ts', text))).toEqual([]);
  });
});

describe('a door draws what it is given', () => {
  test('no id of a page or step and no limit is written in bot/ or web-chat/', () => {
    const said = doors.flatMap((source) => flowWordsIn(source, ids, limits));
    expect(said.join('\n')).toBe('');
  });

  test('the flows in the tree are read: their ids and limits are found', () => {
    expect(ids.size).toBeGreaterThan(5);
    expect(limits.length).toBeGreaterThan(5);
  });

  const page = at(
    'flows/made-up.ts',
    `export const page = flow({ id: 'made-up', steps: { 'first-look': 1, compare: 2, emergency: 3, sit: 4 } });`,
  );
  const madeUp = flowIds([page], [at('engine/schema.ts', `const a = 'emergency';`)]);
  const figures = limitFigures(
    at('flows/limits.ts', `const L = { low: { value: '20.4', unit: 'V', source: 's' }, dead: limit('5', 'V', 's') };`),
  );

  test('ids that are words of the contract or too short to tell are left out', () => {
    expect([...madeUp].sort()).toEqual(['compare', 'first-look', 'made-up']);
    expect(figures).toEqual([
      { value: '20.4', unit: 'V' },
      { value: '5', unit: 'V' },
    ]);
  });

  test.each([
    [`if (prompt.place === 'made-up/first-look') hide();`, 'made-up'],
    [`const open = { compare: 1 }['compare'];`, 'compare'],
    [`const weak = volts < 20.4;`, '20.4'],
    ['const hint = `below 5\u2009V is dead`;', '5 V'],
  ])('caught: %s', (text, what) => {
    expect(flowWordsIn(at('bot/terminal/render.ts', text), madeUp, figures)).toContain(
      `bot/terminal/render.ts says ${what}`,
    );
  });

  test.each([`reply.code(404); const five = 5;`, `const word = 'made up'; const volts = '15 V';`])(
    'left alone: %s',
    (text) => {
      expect(flowWordsIn(at('bot/terminal/render.ts', text), madeUp, figures)).toEqual([]);
    },
  );
});
