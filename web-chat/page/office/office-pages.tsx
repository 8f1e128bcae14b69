import { ShopPage } from '../shop/shop-page.tsx';
import type { OfficeState } from '../state.ts';
import { BoardPage } from './board-page.tsx';
import { CallPage } from './call-page.tsx';

export function OfficePages({ state }: { state: OfficeState }) {
  switch (state.page) {
    case 'call':
      return <CallPage {...state} />;
    case 'board':
      return <BoardPage {...state} />;
    case 'shop':
      return <ShopPage {...state} />;
  }
}
