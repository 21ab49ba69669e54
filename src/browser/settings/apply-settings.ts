import { readerSettings, type SettingName, settingsKey } from '../../contract/reader-settings.ts';

/**
 * Sets what the reader has chosen as attributes of the root. What was kept may be of another edition: of a name
 * or value that this one does not know nothing comes.
 */
export function applySettings(): void {
  const { dataset } = document.documentElement;
  const kept = keptSettings();
  for (const [name, values] of Object.entries(readerSettings)) {
    const value = kept[name as SettingName];
    if (value !== undefined && (values as readonly string[]).includes(value)) dataset[name] = value;
    else delete dataset[name];
  }
}

/** As they were kept; none where the browser keeps nothing or something else stands there. */
export function keptSettings(): Partial<Record<SettingName, string>> {
  try {
    return { ...JSON.parse(localStorage.getItem(settingsKey) ?? '{}') };
  } catch {
    return {};
  }
}
