import { type SettingName, settingsKey } from '../../contract/reader-settings.ts';
import { keptSettings } from './apply-settings.ts';

/** Sets one, at once and for the next pages; without a value it is as the course or the system has it. */
export function keepSetting(name: SettingName, value: string | undefined): void {
  const { dataset } = document.documentElement;
  if (value === undefined) delete dataset[name];
  else dataset[name] = value;
  const { [name]: _, ...others } = keptSettings();
  const kept = value === undefined ? others : { ...others, [name]: value };
  try {
    localStorage.setItem(settingsKey, JSON.stringify(kept));
  } catch {
    // Where nothing may be kept, it holds for this page.
  }
}
