import { isNode, type Node, parse, type Source, walk } from './source.ts';

/** Global names that reach a clock, chance, a machine or a person. The pure part of the engine uses none of them. */
const EFFECTS = new Set([
  ...[
    'globalThis',
    'window',
    'self',
    'document',
    'navigator',
    'location',
    'localStorage',
    'sessionStorage',
    'indexedDB',
  ],
  ...[
    'process',
    'global',
    'require',
    'module',
    'Buffer',
    '__dirname',
    '__filename',
    'console',
    'crypto',
    'performance',
  ],
  ...['setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'requestAnimationFrame'],
  ...['fetch', 'WebSocket', 'EventSource', 'XMLHttpRequest', 'Worker', 'BroadcastChannel', 'Intl', 'eval', 'Function'],
]);

/** Methods whose answer depends on the machine's language or time zone: the same entries would read differently. */
const LOCAL =
  /^(toLocale\w*|localeCompare|get(Hours|Minutes|Date|Day|Month|FullYear|TimezoneOffset)|set(Hours|Date|Month))$/;

const nameOf = (node: unknown): string | null =>
  isNode(node) && node.type === 'Identifier' ? String(node.name) : null;

/** Names that the source binds itself (imports, declarations, parameters): they are not the global of that name. */
function boundNames(program: unknown): Set<string> {
  const bound = new Set<string>();
  const bind = (pattern: unknown): void =>
    walk(pattern, (node, parent, field) => {
      if (node.type === 'Identifier' && !(parent?.type === 'Property' && field === 'key')) bound.add(String(node.name));
      return node.type !== 'TSTypeAnnotation' && field !== 'right';
    });
  walk(program, (node) => {
    if (/^Import.*Specifier$/.test(node.type)) bind(node.local);
    if (node.type === 'VariableDeclarator' || /^(Function|Class)(Declaration|Expression)$/.test(node.type))
      bind(node.id);
    if (node.type === 'ArrowFunctionExpression' || /^Function/.test(node.type)) bind(node.params);
    if (node.type === 'CatchClause') bind(node.param);
    return undefined;
  });
  return bound;
}

function complaint(node: Node, parent: Node | null, field: string, bound: Set<string>): string | null {
  if (node.type === 'MetaProperty') return 'import.meta';
  if (node.type === 'MemberExpression') {
    const property = nameOf(node.property) ?? (node.property as { value?: unknown }).value;
    if (typeof property === 'string' && LOCAL.test(property)) return `.${property}`;
    return null;
  }
  const name = nameOf(node);
  if (name === null) return null;
  const isKey = (field === 'property' || field === 'key') && parent?.computed !== true && parent?.shorthand !== true;
  if (isKey || bound.has(name)) return null;
  if (EFFECTS.has(name)) return name;
  const member = parent?.type === 'MemberExpression' && field === 'object' ? nameOf(parent.property) : null;
  if (name === 'Math') return member === null || member === 'random' ? 'Math.random' : null;
  if (name !== 'Date') return null;
  const dated = parent?.type === 'NewExpression' && field === 'callee' && (parent.arguments as unknown[]).length > 0;
  const asked = parent?.type === 'BinaryExpression' && parent.operator === 'instanceof';
  return dated || asked || member === 'parse' || member === 'UTC' ? null : 'the clock (Date)';
}

/** Where a source reaches outside itself; empty for a pure one. */
export function effectsOf(source: Source): string[] {
  const { program } = parse(source);
  const bound = boundNames(program);
  const found: string[] = [];
  const typesAlone =
    /^TS(?!AsExpression|SatisfiesExpression|NonNullExpression|InstantiationExpression|EnumDeclaration)/;
  walk(program, (node, parent, field) => {
    if (typesAlone.test(node.type)) return false;
    const what = complaint(node, parent, field, bound);
    if (what !== null) found.push(`${source.path} uses ${what}`);
    return undefined;
  });
  return found;
}
