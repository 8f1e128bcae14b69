/**
 * npm run crew -- list | add NAME ROLE… | link ID | devices ID | revoke ID [DEVICE]: who is of the crew, a new person, a
 * link that signs one in, where one is signed in, the end of all sessions and links of one or of one device. Exit codes: 0 done · 2 wrong usage · 3 the database can't be had, or has
 * nobody of this id.
 */
import { openStore } from '../../store/index.ts';
import { NotKept } from '../../store/port.ts';
import { savePerson } from '../crew/shop-desk.ts';
import { databaseOf } from '../database.ts';
import { EXIT, say } from '../database-command.ts';
import { randomHex } from '../random.ts';
import { issueLink } from '../sign-in.ts';
import type { Role } from '../types.ts';

const USAGE = 'usage: npm run -s crew -- list | add NAME ROLE… | link ID | devices ID | revoke ID [DEVICE]';
/** Digits of a device’s name that tell a person’s devices apart. */
const SHOWN = 8;
const ROLES: readonly string[] = ['technician', 'senior', 'dispatcher', 'owner'];
const [what = '', ...rest] = process.argv.slice(2);
const [first = ''] = rest;
const roles = rest.slice(1).filter((role): role is Role => ROLES.includes(role));
const right =
  (what === 'list' && rest.length === 0) ||
  (what === 'add' && first.trim() !== '' && roles.length > 0 && roles.length === rest.length - 1) ||
  ((what === 'link' || what === 'devices') && rest.length === 1) ||
  (what === 'revoke' && (rest.length === 1 || rest.length === 2));
if (!right) {
  process.stderr.write(`${USAGE}\nRoles: ${ROLES.join(', ')}\n`);
  process.exit(EXIT.usage);
}
try {
  await run();
} catch (error) {
  if (!(error instanceof NotKept)) throw error;
  process.stderr.write(`nocool: ${error.message}\n`);
  process.exitCode = EXIT.notHad;
}

async function run(): Promise<void> {
  const store = await openStore(databaseOf(process.env, null));
  const publicUrl = process.env.NOCOOL_URL || `http://localhost:${process.env.NOCOOL_PORT || '8080'}`;
  const linkTo = (id: string) => issueLink({ store, clock: () => new Date(), publicUrl }, id);
  try {
    const people = await store.people();
    if (what === 'list') {
      for (const { id, name, roles: has, certified, active } of people)
        say(
          [id, name, has.join(' and '), certified ? 'certified' : '', active ? '' : 'left'].filter(Boolean).join(' · '),
        );
      return;
    }
    if (what === 'add') {
      const id = `p-${randomHex(4)}`;
      const initials = first.replace(/[^\p{Lu}]/gu, '').slice(0, 3) || first.slice(0, 2).toUpperCase();
      await savePerson(store, { id, name: first.trim(), initials, roles, certified: false, active: true });
      return say(`${id}\n${await linkTo(id)}`);
    }
    const person = people.find(({ id, active }) => id === first && (active || what !== 'link'));
    if (!person) throw new NotKept(`There is nobody ${first} of the crew.`);
    const devices = await store.devices(first, new Date().toISOString());
    if (what === 'devices') {
      for (const { hash, device, made } of devices)
        say(
          [hash.slice(0, SHOWN), device ?? 'a device', made === null ? '' : `since ${made}`]
            .filter(Boolean)
            .join(' · '),
        );
      return;
    }
    if (what === 'revoke' && rest[1] !== undefined) {
      const [device, ...more] = devices.filter(({ hash }) => hash.startsWith(rest[1] ?? ''));
      if (!device || more.length > 0) throw new NotKept(`${first} has no such device, or more than one of them.`);
      await store.endSession(device.hash);
      return say('1 device signed out.');
    }
    say(what === 'link' ? await linkTo(first) : `${await store.signOut(first)} sessions and links ended.`);
  } finally {
    await store.close();
  }
}
