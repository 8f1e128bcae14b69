/** The store's face: the port, and the databases behind it. Only a main file or a command opens one. */
export { isPostgres, nameOf, openStore, placeOf } from './open.ts';
export { Damaged, NotKept, type Store } from './port.ts';
export { isNews, relayed } from './relay.ts';
export { openSqlite } from './sqlite/open.ts';
