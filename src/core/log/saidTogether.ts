import type { LogSaid } from "./LogReading.ts";

/**
 * What a record and a command line say of a log, where the command line goes before. Columns that
 * are named there go before the record's roles; roles of both are taken together.
 */
export function saidTogether(recorded: LogSaid, told: LogSaid): LogSaid {
  const { roles: recordedRoles, ...others } = recorded;
  const roles = { ...(told.columns === undefined && recordedRoles), ...told.roles };
  return {
    ...others,
    ...told,
    ...(Object.keys(roles).length > 0 && { roles }),
  };
}
