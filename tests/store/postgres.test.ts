import { storeContract } from './contract.ts';
import { postgresGround } from './postgres-ground.ts';

storeContract('PostgreSQL', postgresGround);
