// Light and dark: as the system says, or as the reader chooses on the sheet.

const listeners: (() => void)[] = [];
const system = matchMedia("(prefers-color-scheme: dark)");

let printing = false;

export function isDark(): boolean {
  if (printing) return false;
  const chosen = document.documentElement.dataset.theme;
  return chosen ? chosen === "dark" : system.matches;
}

export function onTheme(listener: () => void): void { listeners.push(listener); }

export function colour(name: string): string {
  return getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
}

export function startTheme(): void {
  const select = document.getElementById("theme") as HTMLSelectElement | null;
  const set = (theme: string) => {
    if (theme) document.documentElement.dataset.theme = theme; else delete document.documentElement.dataset.theme;
    for (const listener of listeners) listener();
  };
  let kept = "";
  try { kept = localStorage.getItem("gclint-theme") ?? ""; } catch { /* a page from disk may not be allowed to keep anything */ }
  if (select && (kept === "light" || kept === "dark")) { select.value = kept; set(kept); }
  select?.addEventListener("change", () => {
    set(select.value);
    try { localStorage.setItem("gclint-theme", select.value); } catch { /* as above */ }
  });
  for (const now of [true, false]) {
    addEventListener(now ? "beforeprint" : "afterprint", () => {
      const was = isDark();
      printing = now;
      if (isDark() !== was) for (const listener of listeners) listener();
    });
  }
  system.addEventListener("change", () => { for (const listener of listeners) listener(); });
}
