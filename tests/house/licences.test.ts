/** What runs in production may be used freely: every package of the lock file has a licence of the list, or a reason here. */
import { describe, expect, test } from 'vitest';
import { read } from './source.ts';

interface Locked {
  readonly dev?: boolean;
  readonly license?: string;
}
const packages: Record<string, Locked> = JSON.parse(read('package-lock.json').text).packages;
const ALLOWED = [
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'OFL-1.1',
  'BlueOak-1.0.0',
  'MPL-2.0',
  'Unlicense',
];
/** The image library that sharp loads at run time, as a file of its own that anybody may replace: that is what the LGPL asks. */
const LOADED = /^node_modules\/@img\/sharp-(?:libvips-.+|wasm32|win32-.+)$/;
/** Its package names none; its file LICENSE is the MIT licence. */
const READ_IN_ITS_FILE = ['node_modules/png-js'];
const LOADED_LICENCE = /^(?:Apache-2\.0 AND )?LGPL-3\.0-or-later(?: AND MIT)?$/;

/** `(MIT OR Apache-2.0)` is fine where one of them is; `A AND B` where both are. */
const isAllowed = (licence: string): boolean => {
  const plain = licence.replace(/^\((.*)\)$/, '$1');
  if (plain.includes(' OR ')) return plain.split(' OR ').some(isAllowed);
  return plain.split(' AND ').every((one) => ALLOWED.includes(one.trim()));
};
const unfit = (locked: Record<string, Locked>): string[] =>
  Object.entries(locked)
    .filter(([path, { dev }]) => path !== '' && dev !== true && !READ_IN_ITS_FILE.includes(path))
    .filter(
      ([path, { license = 'none' }]) => !isAllowed(license) && !(LOADED.test(path) && LOADED_LICENCE.test(license)),
    )
    .map(([path, { license }]) => `${path}: ${license ?? 'none'}`);

describe('licences', () => {
  test('of all that runs in production are free', () => {
    expect(Object.values(packages).filter(({ dev }) => dev !== true).length).toBeGreaterThan(100);
    expect(unfit(packages)).toEqual([]);
  });
  test('one that is not would show, and so would none', () => {
    expect(
      unfit({
        'node_modules/x': { license: 'GPL-3.0' },
        'node_modules/y': {},
        'node_modules/z': { license: '(MIT OR GPL-2.0)' },
      }),
    ).toEqual(['node_modules/x: GPL-3.0', 'node_modules/y: none']);
    expect(unfit({ 'node_modules/x': { license: 'LGPL-3.0-or-later' }, 'node_modules/d': { dev: true } })).toHaveLength(
      1,
    );
  });
});
