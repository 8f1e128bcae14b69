import { useId, useState } from 'preact/hooks';
import type { Device, PersonWish } from '../../../engine/desk/types.ts';
import { getDevices, postEndDevice } from '../office/net.ts';

/** Where somebody is signed in, each place to be signed out by itself: for a phone that was lost or changed hands. */
export function Devices({ person }: { readonly person: PersonWish }) {
  const id = useId();
  const [devices, setDevices] = useState<readonly Device[] | null>(null);
  const [said, setSaid] = useState('');
  const look = async (after = ''): Promise<void> => {
    const got = await getDevices(person.id);
    if (got.ok) setDevices(got.value);
    setSaid(got.ok ? after || (got.value.length === 0 ? 'Signed in nowhere.' : '') : got.what || NO_CONTACT);
  };
  const end = async (device: Device): Promise<void> => {
    const got = await postEndDevice(person.id, device.id);
    // One that is gone already is not there to be signed out: the list says so.
    if (got.ok || got.why === 'refused') await look(got.ok ? `Signed out: ${nameOf(device)}.` : got.what);
    else setSaid(got.what || NO_CONTACT);
  };
  return (
    <>
      <button
        type="button"
        class="key"
        aria-expanded={devices !== null}
        aria-controls={id}
        onClick={() => (devices === null ? void look() : setDevices(null))}
      >
        Where signed in
      </button>
      <div id={id} class="devices">
        <p role="status">{said}</p>
        {devices !== null && devices.length > 0 && (
          <ul class="links">
            {devices.map((device) => (
              <li key={device.id}>
                <span>{nameOf(device)}</span>
                <button
                  type="button"
                  class="key"
                  aria-label={`Sign it out: ${person.name}, ${nameOf(device)}`}
                  onClick={() => void end(device)}
                >
                  Sign it out
                </button>
              </li>
            ))}
          </ul>
        )}
      </div>
    </>
  );
}

const NO_CONTACT = 'No contact. Press it again.';
const nameOf = ({ device, made, expires }: Device): string =>
  `${device ?? 'a device'}, ${made === null ? '' : `since ${when(made)}, `}until ${expires.slice(0, 10)}`;
/** By the clock of whoever looks: two phones of one day are told apart by the time. */
const when = (instant: string): string => {
  const at = new Date(instant);
  return new Date(at.getTime() - at.getTimezoneOffset() * 60_000).toISOString().slice(0, 16).replace('T', ' ');
};
