/** Goods-in: one box typed by hand, or a pallet from a delivery list. */

import { useState } from 'react';
import { words } from '../../words';
import { SomebodyFirst } from '../hands';
import { Choice, Page } from '../parts';
import { BoxForm } from './box-form';
import { DeliveryList } from './delivery-list';

export function GoodsIn() {
  const [way, setWay] = useState<'one' | 'list'>('one');
  return (
    <Page title={words.goodsIn.title}>
      <SomebodyFirst />
      <Choice
        label={words.goodsIn.way}
        value={way}
        onChange={setWay}
        options={[
          { value: 'one', label: words.goodsIn.oneBox },
          { value: 'list', label: words.goodsIn.list },
        ]}
      />
      {way === 'one' ? <BoxForm /> : <DeliveryList />}
    </Page>
  );
}
