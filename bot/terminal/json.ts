/** The terminal for programs: a reply a line in, a turn a line out. */
import type { Desk, Person, Turn } from '../../engine/desk/index.ts';
import { type Clock, readTime } from './clock.ts';
import { findPerson, nobody } from './crew.ts';
import type { Begin, Begun } from './job.ts';
import type { Lines } from './lines.ts';
import { badTime, EXIT } from './options.ts';
import { readReplyLine } from './reply-line.ts';
import { Session } from './session.ts';
import { troubleOf } from './trouble.ts';

export interface JsonParts {
  readonly desk: Desk;
  readonly begin: Begin;
  readonly person: Person;
  readonly clock: Clock;
  /** Whether the database ends with this run, so that a job may be opened anew at another time. */
  readonly temporary: boolean;
  readonly lines: Lines;
  readonly write: (value: object) => void;
  readonly client: () => string;
}
/** A script that is piped in is there at once; a program that waits for the first object is not kept waiting. */
const SCRIPT_IS_THERE_MS = 150;
const SETTING = /^\s*--(at|as)\s+(.+?)\s*$/;

/** Runs to the end of the lines; gives the exit code, or what is wrong with the start. */
export async function talkJson(parts: JsonParts): Promise<number | { wrong: string }> {
  const { desk, clock, lines, write, client } = parts;
  let person = parts.person;
  // Settings that stand first in a script hold for the opening too.
  for (let line = await lines.peek(SCRIPT_IS_THERE_MS); line !== null; line = await lines.peek(SCRIPT_IS_THERE_MS)) {
    const setting = await readSetting(desk, line);
    if (setting === null) break;
    await lines.next();
    if ('error' in setting) write(setting);
    else if ('time' in setting) clock.set(setting.time);
    else person = setting.person;
  }
  const begun = await parts.begin(person);
  if ('wrong' in begun) return begun;
  let session = new Session(desk, person, begun.view, client);
  write(turnObject(session, { entries: begun.entries, refusal: null, info: null }));
  let untouched = true;
  let code: number = EXIT.ended;
  for (let line = await lines.next(); line !== null; line = await lines.next()) {
    if (line.trim() === '') continue;
    if (line.trim() === 'quit') break;
    const setting = await readSetting(desk, line);
    if (setting !== null) {
      if ('error' in setting) write(setting);
      else if ('person' in setting) session.person = setting.person;
      else if (setting.time >= lastOf(session.view)) clock.set(setting.time);
      else if (parts.temporary && untouched) session = await anew(parts, session, setting.time);
      else write({ error: `The record already stands at ${lastOf(session.view)}. Time does not go back.` });
      continue;
    }
    const read = readReplyLine(line, session.prompt, client);
    if ('error' in read) {
      write(read);
      continue;
    }
    untouched = false;
    try {
      const turn = 'text' in read ? await session.type(read.text) : await session.send(read.reply);
      code = EXIT.ended;
      write(turnObject(session, turn));
    } catch (error) {
      const trouble = troubleOf(error);
      code = trouble.code;
      write({ error: trouble.text });
    }
  }
  return code;
}

const turnObject = (
  { prompt }: Session,
  { entries, refusal, info }: Omit<Turn, 'view' | 'again' | 'entries'> & Pick<Begun, 'entries'>,
) => ({
  prompt,
  entries,
  refusal,
  info,
});

const lastOf = ({ ticket }: Session['view']): string => ticket.at(-1)?.at ?? '';

/** The same opening at an earlier time, for a script that dates itself after the first object. */
async function anew({ desk, begin, clock, client }: JsonParts, session: Session, time: string): Promise<Session> {
  clock.set(time);
  const begun = await begin(session.person);
  return 'wrong' in begun ? session : new Session(desk, session.person, begun.view, client);
}

/** `--at` and `--as`: read where they come, because the crew may have changed. Null for any other line. */
async function readSetting(
  desk: Desk,
  line: string,
): Promise<{ time: string } | { person: Person } | { error: string } | null> {
  const [, name, value] = SETTING.exec(line) ?? [];
  if (name === undefined || value === undefined)
    return /^\s*--(at|as)\s*$/.test(line) ? { error: `${line.trim()} needs a value.` } : null;
  if (name === 'at') {
    const time = readTime(value);
    return time === null ? { error: badTime(value) } : { time };
  }
  const people = await desk.people();
  const person = findPerson(people, value);
  return person ? { person } : { error: nobody(people, value) };
}
