import type { Sessions } from '../../../web-chat/server/parts.ts';

export function memorySessions(): Sessions {
  const links = new Map<string, { person: string; until: string }>();
  const sessions = new Map<string, { person: string; until: string }>();
  return {
    saveLink: async (hash, person, until) => void links.set(hash, { person, until }),
    useLink: async (hash, at) => {
      const link = links.get(hash);
      links.delete(hash);
      return link && link.until > at ? link.person : null;
    },
    saveSession: async (hash, person, until) => void sessions.set(hash, { person, until }),
    session: async (hash, at) => {
      const found = sessions.get(hash);
      return found && found.until > at ? found.person : null;
    },
    endSession: async (hash) => void sessions.delete(hash),
  };
}
