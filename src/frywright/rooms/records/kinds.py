"""What each kind of entry is called where people read the record."""

from __future__ import annotations

from frywright.model.tongues import Translate

KINDS = {
    "account_change": "account changed",
    "account_linked": "company sign-in linked",
    "anchor_kept": "anchor kept",
    "calibration": "calibration of a cut",
    "card_printed": "card printed",
    "care_done": "care task done",
    "care_figure": "fryer figure timed",
    "close_step": "step of the close",
    "commission_step": "step of commissioning",
    "day_event": "tap on the board",
    "day_note": "note on a day",
    "deviation": "case opened",
    "deviation_step": "step of a case",
    "drill_answer": "drill answered",
    "entries_dropped": "entries dropped",
    "files_dropped": "files dropped",
    "first_day": "first-day figure timed",
    "fork_seen": "record split in two",
    "gap_explained": "gap explained",
    "hold_reading": "hot-holding reading",
    "hold_study": "hold study",
    "in_service": "put in service",
    "item_mapped": "item mapped",
    "kitchen": "kitchen file",
    "kitchen_opened": "kitchen opened",
    "local_rule": "answer of the authority",
    "look_back": "readings looked back at",
    "name_removed": "name removed",
    "nameplate": "nameplate",
    "oil_event": "oil log",
    "oil_meter_check": "oil meter checked",
    "oil_refused": "oil entry refused",
    "oil_setting": "oil limit set",
    "order_promised": "order promised",
    "person": "person listed",
    "place_named": "address of the kitchen",
    "practice_event": "tap on a practice board",
    "probe_log": "probe log",
    "probe_reading": "probe reading",
    "procedure": "procedure card",
    "procedure_signed": "procedure signed",
    "program": "program saved",
    "program_keyed": "program keyed",
    "program_probed": "program decided by readings",
    "program_proof": "program proved",
    "prove_again": "programs to prove again",
    "readback": "read-back",
    "release": "release",
    "release_answered": "release answered",
    "release_arrived": "release arrived",
    "release_wave": "wave of a release",
    "reopen": "fryer released",
    "report": "report attached",
    "retired": "program retired",
    "sales_file": "sales read in",
    "sales_posted": "sales sent by the till",
    "sales_waiting": "sales file waiting",
    "sample_proof": "sampling proof",
    "short_card": "card printed though short",
    "sign_in": "sign-in",
    "sign_in_refused": "sign-ins refused",
    "sign_out": "sign-out",
    "simulation": "simulation kept",
    "site_survey": "site measured",
    "skill": "skill shown",
    "slot": "slot chosen",
    "stop_use": "fryer stopped",
    "thermometer_check": "thermometer checked",
}


def kind_word(kind: str, tr: Translate = str) -> str:
    """A kind of entry in words; one that only a newer version knows as it stands."""
    return tr(KINDS[kind]) if kind in KINDS else kind.replace("_", " ")


def kind_choices(tr: Translate = str) -> list[tuple[str, str]]:
    """Every kind with its words, in the order of the words."""
    return sorted(((kind, tr(word)) for kind, word in KINDS.items()), key=lambda row: row[1])
