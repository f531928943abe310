/** The hand-over page: black on white, one page where it can be, right from a cheap laser printer. */

import type { ReactNode } from 'react';
import { BikeDrawing } from '../drawing';
import type { Sheet } from '../engine/sheet';
import { type Names, words } from '../words';
import { Qr } from './qr';
import { SheetFindings } from './sheet-findings';
import { SheetJoints } from './sheet-joints';
import styles from './sheet-page.module.css';
import { SheetSignatures } from './sheet-signatures';
import { withoutStop } from './without-stop';

export interface SheetPageProps {
  readonly sheet: Sheet;
  readonly names: Names;
  /** What the QR carries: a compact JWS of the record's head. Absent while it is being made. */
  readonly code?: string | undefined;
  /** The customer's drawn signature, as an address of an image. */
  readonly drawn?: string | undefined;
}

const held = words.writing.heldTogether;

export function SheetPage({ sheet, names, code, drawn }: SheetPageProps) {
  const { bike } = sheet;
  const text = words.sheet;
  const measured = measuredText(sheet);
  const adjusted = adjustedAlone(sheet);
  return (
    <article className={styles.sheet} lang="en">
      <header className={styles.header}>
        <p className={styles.shop}>
          {sheet.shop}
          <br />
          {words.day(sheet.date)} {sheet.date.slice(0, 4)}
        </p>
        <h1 className={styles.title}>{sheet.isSealed ? text.title : text.draft}</h1>
      </header>
      <div className={styles.top}>
        <div className={styles.picture}>
          <BikeDrawing bike={bike} tone="print" title={text.drawing} />
        </div>
        <dl className={styles.facts}>
          <Fact label={text.bike}>
            {bike.make} {bike.model}
            {bike.colour !== undefined && `, ${bike.colour}`}
          </Fact>
          <Fact label={text.frame}>{bike.frameNumber}</Fact>
          <Fact label={text.record}>{sheet.record}</Fact>
          <Fact label={text.load}>{held(text.loadValue(bike.loadLimit))}</Fact>
          <Fact label={text.tyres}>{tyresText(sheet)}</Fact>
          <Fact label={text.lever}>{text.leverValue[sheet.frontBrakeLever]}</Fact>
          {sheet.firstCheck !== undefined && (
            <Fact label={text.firstCheck}>{text.by(words.date(sheet.firstCheck))}</Fact>
          )}
        </dl>
        <div className={styles.qr}>{code !== undefined && <Qr text={code} title={text.qr} />}</div>
      </div>
      <SheetJoints sheet={sheet} names={names} />
      <div className={styles.columns}>
        <div className={styles.column}>
          <h2>{text.looked}</h2>
          <p>{text.points(sheet.steps, sheet.points.looked)}</p>
          {adjusted.length > 0 && <p>{held(text.adjusted(adjusted.join('; ')))}</p>}
          {measured !== '' && (
            <p>
              {text.measured}: {measured}.
            </p>
          )}
          <SheetFindings sheet={sheet} />
        </div>
        <div className={styles.column}>
          <h2>{text.everyRide}</h2>
          <ul>
            {sheet.axles.map((axle) => (
              <li key={axle}>{text.axle[axle]}</li>
            ))}
            <li>{text.brakes}</li>
            <li>{text.tyresBars}</li>
            <li>{text.marks}</li>
          </ul>
          <p>{text.doubt}</p>
          {sheet.kept.length > 0 && (
            <>
              <h2>{text.kept}</h2>
              <p>{sheet.kept.map(lowerFirst).join(', ')}</p>
            </>
          )}
        </div>
      </div>
      {sheet.amendments.length > 0 && (
        <>
          <h2>{text.amendments}</h2>
          {sheet.amendments.map(({ text: added, by, at }) => (
            <p key={at.claimed}>
              {added} ({by}, {words.date(at.claimed)})
            </p>
          ))}
        </>
      )}
      <footer className={styles.footer}>
        <SheetSignatures sheet={sheet} drawn={drawn} />
        <p className={styles.seal}>
          {text.seal(grouped(sheet.seal), sheet.entries)} · {sheet.record}
        </p>
      </footer>
    </article>
  );
}

function Fact({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className={styles.fact}>
      <dt>{label}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** What was put right about a finding stands with the finding. */
function adjustedAlone({ points, findings }: Sheet): readonly string[] {
  const told = new Set(findings.flatMap(({ closed }) => (closed ? [withoutStop(closed)] : [])));
  return points.adjusted.map(withoutStop).filter((what) => !told.has(what));
}

/** Pressures stand with the bike's facts; all other measures are listed here. */
function measuredText({ measures }: Sheet): string {
  return measures
    .filter(({ unit }) => unit !== 'kPa')
    .map(({ name, value, unit }) => `${lowerFirst(name)} ${words.writing.measured(value, unit)}`)
    .join('; ');
}

function tyresText({ tyres: { front, rear } }: Sheet): string {
  const written = (kpa: number) => words.writing.measured(kpa, 'kPa');
  return [
    front === undefined ? '' : `${words.sheet.front} ${written(front)}`,
    rear === undefined ? '' : `${words.sheet.rear} ${written(rear)}`,
  ]
    .filter(Boolean)
    .join(', ');
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** A digest in groups of eight, so that two people can compare it aloud. */
function grouped(digest: string): string {
  return digest.replace(/(.{8})(?=.)/g, '$1 ');
}
