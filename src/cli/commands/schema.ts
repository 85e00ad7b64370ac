import { z } from "zod";
import { GlazeFile } from "../../core/glaze/glazeFormat.ts";
import { FiringRecordFile } from "../../core/record/recordFormat.ts";
import {
  DOCUMENT_NAMES,
  documentJsonSchema,
} from "../../core/reports/documents/documentJsonSchema.ts";
import { ScheduleFile } from "../../core/schedule/Schedule.ts";
import { BodyFile } from "../../core/ware/ownBody.ts";
import { answer, answerJson, type CommonOptions, EXIT, refuse } from "../conversation.ts";

const FILES = {
  schedule: ScheduleFile,
  record: FiringRecordFile,
  body: BodyFile,
  "glaze-file": GlazeFile,
} as const;

/** `undunted schema [NAME]`: the JSON Schema of a file or document; without a name, the names. */
export async function run(name: string | undefined, options: CommonOptions): Promise<number> {
  const names = [...Object.keys(FILES), ...DOCUMENT_NAMES];
  if (name === undefined) {
    if (options.json) answerJson(names);
    else answer(names.join("\n"));
    return EXIT.fine;
  }
  if (Object.hasOwn(FILES, name)) {
    answerJson(z.toJSONSchema(FILES[name as keyof typeof FILES], { io: "input" }));
    return EXIT.fine;
  }
  const document = DOCUMENT_NAMES.find((each) => each === name);
  if (document === undefined)
    return refuse(
      [
        {
          code: "command/schema-name",
          where: "command line",
          what: `there is no schema called "${name}"`,
          expected: names.join(", "),
          fix: "one of these names",
        },
      ],
      options,
    );
  answerJson(documentJsonSchema(document));
  return EXIT.fine;
}
