import { storeContract } from './contract.ts';
import { listContract } from './list-contract.ts';
import { photoContract } from './photo-contract.ts';
import { postgresGround } from './postgres-ground.ts';

storeContract('PostgreSQL', postgresGround);
listContract('PostgreSQL', postgresGround);
photoContract('PostgreSQL', postgresGround);
