import { posix } from 'node:path';
import { parse, type Source, walk } from './source.ts';

interface Import {
  /** A path from the top for a file of ours, else the specifier as written. */
  readonly target: string;
  readonly ours: boolean;
  /** Erased by the compiler: nothing of it runs. */
  readonly typeOnly: boolean;
}

interface Zone {
  readonly name: string;
  readonly holds: RegExp;
  /** Files of ours that may be imported. */
  readonly files: readonly RegExp[];
  /** Files of ours of which only types may be imported. */
  readonly types?: readonly RegExp[];
  readonly packages: readonly RegExp[];
}

/** The one list of libraries that the pure part of the engine may use. Each is free of clock, chance and environment. */
export const PURE_LIBRARIES = ['xstate', 'zod', 'zod/mini', '@noble/hashes', 'decimal.js', 'psychrolib'] as const;
/** xstate stays behind these: everything else sees places, facts and standings. */
const XSTATE_FILES = ['engine/compile.ts', 'engine/graph.ts'];

const named = (names: readonly string[]): RegExp[] =>
  names.map((name) => new RegExp(`^${name.replace(/[.]/g, '\\.')}${name === 'zod' ? '' : '(/.*)?'}$`));
const NODE = /^node:/;
const PURE = /^engine\/(?!(desk|report|store)\/)/;
const DESK_TYPES = /^engine\/desk\/types\.ts$/;
const FACE = [/^engine\/index\.ts$/, /^engine\/desk\/(index|types)\.ts$/, /^flows\/index\.ts$/];
/** What only a file needs that puts the parts together: a main file, or what the terminal's runs. */
const COMPOSITION = [/^engine\/store\/(index|port)\.ts$/, /^seeds\/index\.ts$/];
const BOT_COMMON = /^bot\/[^/]+\.ts$/;

const pureLibraries = named(PURE_LIBRARIES);
const withoutXstate = named(PURE_LIBRARIES.filter((name) => name !== 'xstate'));

const ZONES: readonly Zone[] = [
  { name: 'engine', holds: PURE, files: [PURE], types: [DESK_TYPES], packages: pureLibraries },
  {
    name: 'desk',
    holds: /^engine\/desk\//,
    files: [/^engine\//, /^flows\/index\.ts$/],
    packages: [
      NODE,
      ...withoutXstate,
      ...named(['pino', 'sharp', 'file-type', '@dagrejs/dagre', '@resvg/resvg-js', 'pure-rand']),
    ],
  },
  {
    name: 'report',
    holds: /^engine\/report\//,
    files: [PURE, /^engine\/report\//],
    types: [DESK_TYPES, /^engine\/store\/port\.ts$/],
    packages: [NODE, ...withoutXstate, ...named(['pdfkit', 'fontkit', '@resvg/resvg-js', 'uqr'])],
  },
  {
    name: 'store',
    holds: /^engine\/store\//,
    files: [PURE, /^engine\/store\//],
    types: [DESK_TYPES],
    packages: [NODE, ...withoutXstate, ...named(['kysely', 'better-sqlite3', 'pg'])],
  },
  { name: 'flows', holds: /^flows\//, files: [/^flows\//, /^engine\/vocabulary\.ts$/], packages: [] },
  { name: 'bot', holds: BOT_COMMON, files: [...FACE, BOT_COMMON], packages: [NODE, ...named(['zod'])] },
  {
    name: 'terminal',
    holds: /^bot\/terminal\//,
    files: [...FACE, BOT_COMMON, /^bot\/terminal\//],
    packages: [NODE, ...named(['zod', 'zod/mini'])],
  },
  {
    name: 'slack',
    holds: /^bot\/slack\//,
    files: [...FACE, BOT_COMMON, /^bot\/slack\//],
    packages: [NODE, /^@slack\//, ...named(['fastify', 'zod', 'zod/mini', 'pino'])],
  },
  {
    name: 'web server',
    holds: /^web-chat\/server\//,
    files: [...FACE, /^web-chat\//],
    packages: [
      NODE,
      /^@fastify\//,
      ...named([
        'fastify',
        'fastify-plugin',
        'fastify-type-provider-zod',
        'zod',
        'zod/mini',
        'pino',
        'prom-client',
        'uqr',
      ]),
      ...named(['preact', 'preact-render-to-string']),
    ],
  },
  {
    name: 'web page',
    holds: /^web-chat\/(?!server\/)/,
    files: [/^engine\/index\.ts$/, /^flows\/index\.ts$/, /^web-chat\/(?!server\/)/],
    types: [DESK_TYPES, /^web-chat\/server\//],
    packages: [/^@fontsource\//, /^virtual:/, ...named(['preact', 'idb', 'zod/mini'])],
  },
  { name: 'seeds', holds: /^seeds\//, files: [/^(seeds|engine|flows)\//], packages: [NODE, ...withoutXstate] },
];

export const zoneOf = (path: string): string | undefined => ZONES.find((zone) => zone.holds.test(path))?.name;

function importsOf(source: Source): Import[] {
  const at = (specifier: string, typeOnly: boolean): Import => {
    const bare = specifier.replace(/\?.*$/, '');
    const ours = bare.startsWith('.') || bare.startsWith('/');
    return { target: ours ? posix.join(posix.dirname(source.path), bare) : bare, ours, typeOnly };
  };
  const { module, program } = parse(source);
  const found: Import[] = [];
  for (const { moduleRequest, entries } of module.staticImports)
    found.push(at(moduleRequest.value, entries.length > 0 && entries.every((entry) => entry.isType)));
  for (const { entries } of module.staticExports) {
    const from = entries.find((entry) => entry.moduleRequest)?.moduleRequest;
    if (from)
      found.push(
        at(
          from.value,
          entries.every((entry) => entry.isType),
        ),
      );
  }
  walk(program, (node) => {
    if (node.type === 'ImportExpression' || node.type === 'TSImportType') {
      const asked = (node.source ?? node.argument) as { value?: unknown; literal?: { value?: unknown } };
      const specifier = asked.value ?? asked.literal?.value;
      found.push(at(typeof specifier === 'string' ? specifier : '(computed)', node.type === 'TSImportType'));
    }
    return undefined;
  });
  return found;
}

/** What a source imports though it may not; empty for a source that keeps the rules. */
export function forbiddenImports(source: Source): string[] {
  const zone = ZONES.find(({ holds }) => holds.test(source.path));
  if (!zone) return [`${source.path} is in no part of the tree that has a rule`];
  const main = /^(bot\/[^/]+\/main|bot\/terminal\/run|web-chat\/server\/main)\.ts$/.test(source.path);
  const files = main ? [...zone.files, ...COMPOSITION] : zone.files;
  return importsOf(source)
    .filter(({ target, ours, typeOnly }) => {
      if (/^xstate(\/|$)/.test(target) && !XSTATE_FILES.includes(source.path)) return true;
      const allowed = ours ? (typeOnly ? [...files, ...(zone.types ?? [])] : files) : zone.packages;
      return !allowed.some((pattern) => pattern.test(target));
    })
    .map(({ target }) => `${source.path} (${zone.name}) imports ${target}`);
}
