/** One bike on the list: whose it is, and each joint with its figure, what was set, where it may have ended, and the chance. */

import { Link } from 'wouter';
import { writeTorqueMarking } from '../../engine/units';
import type { BikeInDoubt, CalledBack, JointInDoubt } from '../../state';
import { words } from '../../words';
import { boardWords } from '../../words/board-words';
import { useNames } from '../app-context';
import { Button } from '../parts';
import { routes } from '../routes';
import styles from './reach-back.module.css';

export interface BikeRowProps {
  readonly bike: BikeInDoubt;
  readonly onCall: () => void;
}

export function BikeRow({ bike, onCall }: BikeRowProps) {
  const { reachBack } = boardWords;
  const { frameNumber, make, model, customer, handedOverAt, calledBack } = bike;
  const isGone = bike.status === 'handed-over';
  return (
    <li className={styles.bike}>
      <div className={styles.who}>
        <h3>
          {frameNumber} · {make} {model}
        </h3>
        <p>
          {isGone
            ? reachBack.handedOver(words.date(handedOverAt ?? ''))
            : words.terms.statusNames[bike.status]}
          {isGone && ', '}
          {isGone &&
            (customer === undefined
              ? reachBack.noCustomer
              : [customer.name, customer.contact].filter(Boolean).join(', '))}
        </p>
        {calledBack.map((note) => (
          <CalledBackNote key={`${note.at.claimed} ${note.text}`} note={note} />
        ))}
      </div>
      <Joints joints={bike.joints} />
      <div className={styles.tools} data-on-screen-only>
        <Link
          className={styles.link}
          href={isGone ? routes.record(bike.job) : routes.stand(bike.job)}
        >
          {isGone ? reachBack.openRecord : reachBack.openJob}
        </Link>
        <Button
          label={`${isGone ? reachBack.callBack : reachBack.reopen}: ${frameNumber}`}
          onPress={onCall}
        >
          {isGone ? reachBack.callBack : reachBack.reopen}
        </Button>
      </div>
    </li>
  );
}

/** Who called it back and when, and what was agreed with whoever rides it. */
function CalledBackNote({ note: { by, at, how, text } }: { readonly note: CalledBack }) {
  const { person } = useNames(undefined);
  const { reachBack } = boardWords;
  const when = `${words.date(at.claimed)}, ${words.time(at.claimed)}`;
  const isCalled = how === 'record-amended';
  return (
    <p>
      <strong>{(isCalled ? reachBack.calledBack : reachBack.reopenedBy)(person(by), when)}</strong>
      {isCalled && ` ${reachBack.agreed(reachBack.agreedIn(text))}`}
    </p>
  );
}

function Joints({ joints }: { readonly joints: readonly JointInDoubt[] }) {
  const { reachBack } = boardWords;
  return (
    <table className={styles.joints}>
      <thead>
        <tr>
          <th scope="col">{reachBack.joint}</th>
          <th scope="col">{reachBack.figure}</th>
          <th scope="col">{reachBack.set}</th>
          <th scope="col">{reachBack.ended}</th>
          <th scope="col">{reachBack.chance}</th>
        </tr>
      </thead>
      <tbody>
        {joints.map((joint) => (
          <JointRow key={joint.joint} joint={joint} />
        ))}
      </tbody>
    </table>
  );
}

function JointRow({ joint }: { readonly joint: JointInDoubt }) {
  const { writing } = words;
  const { reachBack } = boardWords;
  const { name, figure, onScale, wrench, low, high, probabilityOutside, goneOver } = joint;
  const on = joint.adapter === undefined ? '' : `, ${joint.adapter.name}`;
  return (
    <tr>
      <th scope="row">
        {name}
        <span className={styles.detail}>
          {reachBack.classes[joint.class]}; {words.date(joint.on)}
        </span>
        {goneOver !== undefined && (
          <span className={styles.detail}>
            {reachBack.goneOver(goneOver.wrench, words.date(goneOver.at))}
          </span>
        )}
      </th>
      <td className={styles.short} data-label={reachBack.figure}>
        {writeTorqueMarking(figure)}
      </td>
      <td data-label={reachBack.set}>
        <span className={styles.short}>
          {writing.figure(onScale, 2)} {wrench.unit}
        </span>
        {on}
      </td>
      <td className={styles.short} data-label={reachBack.ended}>
        {low === undefined || high === undefined
          ? reachBack.endedUnknown
          : reachBack.endedAt(writing.figure(low, 2), writing.figure(high, 2))}
      </td>
      <td data-label={reachBack.chance}>
        {probabilityOutside === undefined
          ? reachBack.chanceUnknown
          : reachBack.chanceText(probabilityOutside)}
      </td>
    </tr>
  );
}
