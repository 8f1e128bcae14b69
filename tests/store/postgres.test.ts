import { storeContract } from './contract.ts';
import { listContract } from './list-contract.ts';
import { postgresGround } from './postgres-ground.ts';

storeContract('PostgreSQL', postgresGround);
listContract('PostgreSQL', postgresGround);
