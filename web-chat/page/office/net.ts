/** The server's API as an office uses it. What a caller said goes in bodies, never in an address. */
import type { Board, Device, JobCard, Known, PersonWish, ShopView, Turn } from '../../../engine/desk/types.ts';
import type { Settings, Truck } from '../../../engine/index.ts';
import { ask, pathOf, post, type Sent } from '../net/api.ts';

export const postTake = (client: string, training: boolean): Promise<Sent<Turn>> =>
  post('/api/calls', { client, ...(training ? { training } : {}) });
export const postKnown = (typed: string): Promise<Sent<Known>> => post('/api/known', { typed });
export const postUnit = (call: string, unit: string, client: string): Promise<Sent<Turn>> =>
  post(`/api/calls/${encodeURIComponent(call)}/unit`, { unit, client });
export const getBoard = (): Promise<Sent<Board>> => ask('/api/board', {});
export const postFind = (words: string): Promise<Sent<JobCard[]>> => post('/api/find', { words });
export const postAssign = (job: string, to: string, client: string): Promise<Sent<Turn>> =>
  post(`${pathOf(job)}/assign`, { to, client });

/** Each change answers with the shop as it is then. */
const change = (what: string, body: unknown): Promise<Sent<ShopView>> => post(`/api/shop/${what}`, body);
export const postPerson = (person: PersonWish): Promise<Sent<ShopView>> => change('people', person);
export const postSettings = (settings: Settings): Promise<Sent<ShopView>> => change('settings', settings);
/** `gone` takes it out of service. */
export const postTruck = (truck: Truck & { gone?: boolean }): Promise<Sent<ShopView>> => change('trucks', truck);
export const postRevoke = (id: string): Promise<Sent<{ ended: number }>> =>
  post(`/api/shop/people/${encodeURIComponent(id)}/revoke`, {});
export const getDevices = (id: string): Promise<Sent<Device[]>> =>
  ask(`/api/shop/people/${encodeURIComponent(id)}/devices`, {});
export const postEndDevice = (id: string, device: string): Promise<Sent<unknown>> =>
  post(`/api/shop/people/${encodeURIComponent(id)}/devices/${encodeURIComponent(device)}/revoke`, {});
export const postLink = (id: string): Promise<Sent<{ url: string; qr: string }>> =>
  post(`/api/shop/people/${encodeURIComponent(id)}/link`, {});
