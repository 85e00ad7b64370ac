/** A schedule file that comes with the page. */
interface ShippedFile {
  readonly name: string;
  readonly text: string;
}

const FILES: Readonly<Record<string, string>> = import.meta.glob("../../../schedules/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The schedule files of the project, as they are. */
export const SHIPPED_SCHEDULES: readonly ShippedFile[] = Object.entries(FILES).map(
  ([path, text]) => ({ name: path.replace(/^.*\//, ""), text }),
);
