import type { OfficeState } from '../state.ts';
import { BoardPage } from './board-page.tsx';
import { CallPage } from './call-page.tsx';

export const OfficePages = ({ state }: { state: OfficeState }) =>
  state.page === 'call' ? <CallPage {...state} /> : <BoardPage {...state} />;
