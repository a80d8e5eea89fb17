"""The notebook's cells, executed by nbconvert, with all that they print.

Deno's kernel may say that a cell is done before its last output is out, and nbconvert listens no longer than that. So
each cell is followed by a mark, printed and returned: when both have come, everything before them has come as well.
"""

from nbconvert.preprocessors import ExecutePreprocessor
from traitlets import Bool

MARK = "everything before this has come"
OUTPUTS = ("stream", "display_data", "execute_result", "error")


class PatientExecutePreprocessor(ExecutePreprocessor):
    enabled = Bool(True).tag(config=True)

    def __init__(self, **settings):
        super().__init__(**settings)
        self.on_cell_executed = self.gather

    async def gather(self, cell, cell_index, **_):
        self.kc.execute(f"console.log('{MARK}'); '{MARK}'", store_history=False)
        awaited = {"stream", "execute_result"}
        while awaited:
            message = await self.kc.iopub_channel.get_msg(timeout=60)
            kind, content = message["msg_type"], message["content"]
            if MARK in str(content.get("data", "")):
                awaited.discard(kind)
                continue
            if kind == "stream" and MARK in content["text"]:
                awaited.discard(kind)
                content["text"] = content["text"].replace(f"{MARK}\n", "")
            if kind in OUTPUTS and content.get("text") != "":
                self.process_message(message, cell, cell_index)
