import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A file by its path from the top, with forward slashes. */
export interface Source {
  readonly path: string;
  readonly text: string;
}

const git = (...args: string[]): string[] =>
  execFileSync('git', args, { cwd: ROOT, encoding: 'utf8', maxBuffer: 1 << 28 })
    .split('\n')
    .filter((line) => line !== '');

/** What is in the repository. */
export const committed = (): string[] => git('ls-files');

/** What is in the repository or about to be: a rule should speak before the commit, not after it. */
export const present = (): string[] =>
  [...new Set(git('ls-files', '--cached', '--others', '--exclude-standard'))].filter((path) => existsSync(ROOT + path));

export const read = (path: string): Source => ({ path, text: readFileSync(ROOT + path, 'utf8') });

/** The product's own code, without tests and tools. */
export const sources = (): Source[] =>
  present()
    .filter((path) => /^(engine|flows|bot|web-chat|seeds)\/.*\.tsx?$/.test(path))
    .map(read);

/** A syntax node of any kind; the rules look at a handful of fields only. */
export interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}
export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

/** Throws where the source doesn't parse: a rule that silently skips a file holds for nothing. */
export function parse({ path, text }: Source) {
  const parsed = parseSync(path, text);
  const [first] = parsed.errors;
  if (first) throw new Error(`${path} doesn't parse: ${first.message}`);
  return parsed;
}

/** Visits every node with its parent and the field it stands in; a visitor that returns false leaves out what is below. */
export function walk(
  node: unknown,
  visit: (node: Node, parent: Node | null, field: string) => boolean | undefined,
  parent: Node | null = null,
  field = '',
): void {
  if (Array.isArray(node)) for (const item of node) walk(item, visit, parent, field);
  else if (isNode(node) && visit(node, parent, field) !== false)
    for (const [name, value] of Object.entries(node)) walk(value, visit, node, name);
}

/** Every text a source carries as a value: strings, template pieces, text between tags. Not import paths, not types. */
export function textsOf(source: Source): string[] {
  const texts: string[] = [];
  walk(parse(source).program, (node) => {
    if (/^(Import|ExportAll)/.test(node.type) || node.type === 'TSLiteralType') return false;
    if (node.type === 'Literal' && typeof node.value === 'string') texts.push(node.value);
    if (node.type === 'JSXText' && typeof node.value === 'string') texts.push(node.value);
    if (node.type === 'TemplateElement') texts.push((node.value as { raw: string }).raw);
    return undefined;
  });
  return texts;
}

/** Every number a source carries as a value. */
export function numbersOf(source: Source): number[] {
  const numbers: number[] = [];
  walk(parse(source).program, (node) => {
    if (node.type === 'Literal' && typeof node.value === 'number') numbers.push(node.value);
    return undefined;
  });
  return numbers;
}
