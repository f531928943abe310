/** Says that a backup is due, or that a restore was broken off; silent otherwise. */

import { Link } from 'wouter';
import { useStore } from 'zustand';
import { backupDue } from '../state';
import { words } from '../words';
import { useApp } from './app-context';
import { Notice } from './parts';
import { routes } from './routes';

export function BackupReminder() {
  const app = useApp();
  const backup = useStore(app.backup);
  const { rows, loaded } = useStore(app.rack);
  const due = backupDue(backup, rows, app.clock.today());
  if (backup.isRestoring)
    return (
      <Notice as="status" actions={<Link href={routes.takeIn}>{words.backup.open}</Link>}>
        <p>{words.backup.unfinished}</p>
      </Notice>
    );
  if (!loaded || due === undefined) return null;
  return (
    <Notice as="status" actions={<Link href={routes.shop}>{words.backup.toBackup}</Link>}>
      <p>{due === 'never' ? words.backup.never : words.backup.dueAfter(due)}</p>
    </Notice>
  );
}
