/** The plain way from the demo to a shop of one's own. */

import { useState } from 'react';
import { marketIds } from '../../engine/market';
import { words } from '../../words';
import { useApp } from '../app-context';
import { Button, Dialog, Notice, Pick, PinPad, Problem, TextField } from '../parts';
import styles from './shop.module.css';

export function OwnShop() {
  const [isAsking, ask] = useState(false);
  return (
    <section className={styles.keeping}>
      <h2>{words.shop.ownTitle}</h2>
      <p>{words.shop.ownText}</p>
      <div className={styles.buttons}>
        <Button onPress={() => ask(true)}>{words.shop.ownButton}</Button>
      </div>
      {isAsking && <OwnShopDialog onClose={() => ask(false)} />}
    </section>
  );
}

function OwnShopDialog({ onClose }: { readonly onClose: () => void }) {
  const app = useApp();
  const [shop, setShop] = useState('');
  const [market, setMarket] = useState<string>('gb');
  const [name, setName] = useState('');
  const [pin, setPin] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const start = async () => {
    setBusy(true);
    const started = await app.startOwnShop({ shop, market, name, pin });
    setBusy(false);
    if (started.ok) onClose();
    else setProblem(words.refusal({ ...started.refusal }));
  };
  return (
    <Dialog
      title={words.shop.ownTitle}
      closeLabel={words.app.cancel}
      onClose={onClose}
      wide
      actions={
        <Button tone="solid" busy={isBusy} onPress={() => void start()}>
          {words.shop.ownConfirm}
        </Button>
      }
    >
      <Notice>
        <p>{words.shop.ownWarning}</p>
      </Notice>
      <Problem>{problem}</Problem>
      <TextField
        label={words.shop.shopName}
        value={shop}
        onChange={setShop}
        maxLength={80}
        autoCapitalize="words"
      />
      <Pick
        label={words.shop.market}
        value={market}
        onChange={setMarket}
        options={marketIds.map((value) => ({ value, label: words.shop.markets[value] ?? value }))}
      />
      <TextField
        label={words.shop.yourName}
        value={name}
        onChange={setName}
        maxLength={80}
        autoCapitalize="words"
      />
      <PinPad
        label={words.shop.newPin}
        isLabelled
        value={pin}
        onChange={setPin}
        eraseLabel={words.app.erase}
      />
    </Dialog>
  );
}
