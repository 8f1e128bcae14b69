/** The store's face: the port, and the database behind it. Only a main file opens one. */
export { Damaged, NotKept, type Store } from './port.ts';
export { openSqlite } from './sqlite/open.ts';
