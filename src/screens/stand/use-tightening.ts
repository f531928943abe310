/** A joint at the stand: its figure, the wrench to take, what to set, and which round comes next. */

import { useState } from 'react';
import { useStore } from 'zustand';
import { figureFor, layoutOf, type NextPass, nextPass } from '../../engine/job';
import type { PlanStep } from '../../engine/plan';
import { type Adapter, type Figure, type RankedWrench, rankWrenches } from '../../engine/torque';
import { writeTorqueMarking } from '../../engine/units';
import { knownFigures, printedElsewhere, type Tool } from '../../state';
import { words } from '../../words';
import { jointWords } from '../../words/joint';
import { useApp, useNames } from '../app-context';
import type { ShownJob } from '../use-job';
import { type Readings, useReadings } from './use-readings';

export type NamedAdapter = Adapter & { readonly id: string; readonly name: string };

export interface Tightening {
  readonly shown: ShownJob;
  readonly next: NextPass | undefined;
  readonly figure: Figure | undefined;
  /** What the part of this model said before, as long as nobody has read it on this very bike: shown, and confirmed by the pass made to it. */
  readonly unread: Figure | undefined;
  /** What is printed on such joints of other models: one tap instead of typing. */
  readonly printed: readonly Figure[];
  /** What an electronic wrench typed for the bolts of the pass that comes next. */
  readonly readings: Readings;
  readonly ranked: readonly RankedWrench[];
  readonly wrench: RankedWrench | undefined;
  readonly adapters: readonly NamedAdapter[];
  readonly adapter: NamedAdapter | undefined;
  /** By adapter, the wrench on which its grip was measured: on another one the lever is another. */
  readonly madeFor: Readonly<Record<string, string>>;
  readonly isStale: boolean;
  readonly figureText: string | undefined;
  readonly wrenchText: string | undefined;
  readonly dialog: 'figure' | 'wrench' | undefined;
  readonly show: (dialog: 'figure' | 'wrench' | undefined) => void;
  readonly take: (wrench: string, adapter: string | undefined) => void;
  readonly enter: (figure: Figure) => Promise<boolean>;
  readonly action: (
    following: string,
    onDone: () => void,
  ) =>
    | { readonly label: string; readonly detail?: string; readonly onPress: () => void }
    | undefined;
}

export function useTightening(shown: ShownJob, step: PlanStep): Tightening {
  const app = useApp();
  const { store, open } = shown;
  const names = useNames(open.state.plan);
  const tools = useStore(app.tools, ({ rows }) => rows);
  const book = useStore(app.figures, ({ rows }) => rows);
  const [dialog, show] = useState<'figure' | 'wrench'>();
  const [taken, setTaken] = useState<{ wrench: string; adapter: string | undefined }>();
  const known = figureFor(open.state, step.joint?.id ?? '');
  const before = open.state.bike && knownFigures(book, open.state.bike)[step.joint?.id ?? ''];
  const unread = known === undefined && before?.source.kind === 'part' ? before : undefined;
  const answer = step.joint === undefined ? undefined : nextPass(open.state, step, unread);
  const next = answer?.ok ? answer.value : undefined;
  const figure = next?.figure;
  const adapters = tools.flatMap(adapterOf);
  const adapter = adapters.find(({ id }) => id === taken?.adapter);
  const wrenches = tools.flatMap((tool) =>
    tool.kind === 'wrench' && tool.wrench.condition !== 'retired' ? [tool.wrench] : [],
  );
  const madeFor = Object.fromEntries(tools.flatMap(madeForOf));
  const only = adapter && madeFor[adapter.id];
  const fitting = wrenches.filter(({ id }) => only === undefined || id === only);
  const ranked =
    figure === undefined ? [] : rankWrenches(figure, fitting, app.clock.today(), adapter);
  const chosen = ranked.find((one) => one.wrench.id === taken?.wrench) ?? ranked[0];
  const wrench = chosen?.plan === undefined && taken === undefined ? undefined : chosen;

  const readings = useReadings({
    shown,
    step,
    next,
    wrench: wrench?.wrench,
    adapter,
    isListening: dialog === undefined,
  });

  const enter = async (entered: Figure) => {
    if (step.joint === undefined) return false;
    const kept = await store.act({ kind: 'enter-figure', joint: step.joint.id, figure: entered });
    // The shelf is a convenience for the next bike: the figure itself is on the disk by now.
    if (kept) void remember(step.joint.id, entered);
    return kept;
  };

  /** The next bike of this model is offered what was read here; a document or an approval is never overwritten. */
  const remember = async (joint: string, read: Figure) => {
    const { bike } = open.state;
    if (bike === undefined || read.source.kind === 'usual') return;
    const held = knownFigures(book, bike)[joint]?.source.kind;
    if (held === 'document' || held === 'approved') return;
    const { make, model } = bike;
    await app.saveFigure({ make, model, joint, figure: read });
  };

  const action: Tightening['action'] = (following, onDone) => {
    if (next === undefined) return { label: words.torque.enter, onPress: () => show('figure') };
    if (wrench?.plan === undefined)
      return {
        label: words.torque.change,
        detail: words.torque.noWrench,
        onPress: () => show('wrench'),
      };
    const isLast = next.pass.pass === next.of;
    const made =
      readings.rows.length > 0
        ? jointWords.reading.record(readings.rows.length)
        : isLast
          ? clickedLabel(layoutOf(step)?.bolts ?? 1)
          : words.torque.risen(next.pass.pass);
    return {
      label: unread === undefined ? made : words.torque.confirmed(made),
      detail: isLast
        ? following
        : words.torque.nextPass(words.writing.numbered(next.pass.pass + 1)),
      onPress: () =>
        void store
          .act({
            kind: 'make-pass',
            step: step.id,
            pass: next.pass.pass,
            wrench: wrench.wrench,
            ...(adapter && { adapter }),
            ...(unread && { figure: unread }),
            ...readings.asked,
          })
          .then((kept) => kept && isLast && onDone()),
    };
  };

  return {
    shown,
    next,
    figure,
    unread,
    readings,
    printed: known === undefined ? printedElsewhere(book, step.joint?.id ?? '') : [],
    ranked,
    wrench,
    adapters,
    adapter,
    madeFor,
    isStale: open.state.steps[step.id]?.standing === 'stale',
    figureText: figure && `${writeTorqueMarking(figure)}, ${words.source(figure.source, names)}`,
    wrenchText: wrench && wrenchText(wrench, adapter),
    dialog,
    show,
    take: (id, on) => setTaken({ wrench: id, adapter: on }),
    enter,
    action,
  };
}

function adapterOf(tool: Tool): readonly NamedAdapter[] {
  return tool.kind === 'adapter' && tool.retired !== true
    ? [{ ...tool.adapter, id: tool.id, name: tool.name }]
    : [];
}

function madeForOf(tool: Tool): readonly (readonly [string, string])[] {
  return tool.kind === 'adapter' && tool.wrench !== undefined ? [[tool.id, tool.wrench]] : [];
}

function wrenchText({ wrench }: RankedWrench, adapter: NamedAdapter | undefined): string {
  const { lowest, highest, unit } = wrench;
  const range = words.torque.range(
    words.writing.figure(lowest),
    words.writing.figure(highest),
    unit,
  );
  const on = adapter === undefined ? '' : ` ${words.torque.with(adapter.name)}`;
  return `${wrench.id}${on} (${range}, ${words.torque.due(words.date(wrench.dueOn))})`;
}

function clickedLabel(bolts: number): string {
  return words.torque.clicked[bolts] ?? words.torque.allClicked(words.writing.numbered(bolts));
}
