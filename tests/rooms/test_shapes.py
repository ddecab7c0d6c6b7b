"""What a browser's script or another program reads as JSON keeps its names, in their order."""

from __future__ import annotations

from dataclasses import fields

import pytest

from frywright.paper.day_chart import Band
from frywright.rooms import standing
from frywright.rooms.care import close, commissioning, oil_money, oil_moves, procedures, training, upkeep, vat
from frywright.rooms.day import board_rows, compare, plan_view, pulling, views, what_if
from frywright.rooms.records import case_rows, pack

ADVISED = "kind fryer fryer_name start_s start reason gain_money product pieces caution"
FRYER = "key number name state since_filter filter_every pressure text held down down_text"
PRICE = "total_money batches_money short_money waste_money fill_frac waste_frac sold_n short_n waste_n"
SHAPES = {
    board_rows.BoardView: "date now_s clock practice open people advice fryers shelf orders last_drops"
    " level_n notes estimated loads times reasons alarm",
    board_rows.DropNow: f"{ADVISED} program name amount headline in_service",
    board_rows.TurnOrWait: f"{ADVISED} headline",
    board_rows.Empty: f"{FRYER} act",
    board_rows.Cooking: f"{FRYER} product pieces drop drop_s lift_s lift vent_s vent_text act",
    board_rows.ShelfRow: "product name out count coming hold_s ends_s trays expired to_order into",
    board_rows.TrayRow: "left lift ends ends_s expired",
    board_rows.Into: "fryer number name free off least most takes",
    board_rows.LastDrop: "name at",
    board_rows.LoadWords: "fryer pieces text",
    board_rows.LoadTime: "fryer product name pieces lift_s vent_s",
    board_rows.Reason: "value text",
    plan_view.PlanView: "date drops filters hours fryers shelf last_drops fill_frac waste_frac good money"
    " money_sd currency waste_n notes broken",
    plan_view.PlannedDrop: "drop lift drop_h lift_h fryer fryer_name product product_name pieces amount"
    " program version evidence",
    plan_view.PlannedTurn: "fryer fryer_name at from_h to_h",
    plan_view.FryerHours: "key name from to used",
    Band: "name low mid high",
    plan_view.ForecastView: "date weekday halves products level_cv_frac",
    plan_view.ForecastRow: "key name total_n low_n high_n mix_n halves",
    pulling.PullView: "use pull_on rows caution",
    pulling.PullRow: "product name unit mean_n needed_n on_hand_n expired_n cases case_count pull_n"
    " short_frac over_frac over_n worst_cut thaw_h thaw_least_h pull_on balance use_by warning",
    pulling.CutBalance: "cut needed_n given_n",
    compare.NewPlan: "what product halves old_money new_money short_n fill_old_frac fill_new_frac trim"
    " old_drops new_drops",
    compare.HalfHour: "from old_n new_n",
    what_if.CheckView: "broken price engine",
    what_if.PriceView: PRICE,
    what_if.DaysView: f"{PRICE} days_count half_width_money fill_half_width_frac waste_half_width_frac"
    " worst_fill_frac worst_waste_frac",
    what_if.ReplayView: "days_count base",
    what_if.EngineReplayView: "days_count base engine",
    what_if.ChangeView: "days_count base other change",
    what_if.ChangeCost: "money half_width_money",
    views.SalesView: "days_count from to unmapped voided_n outages catering",
    views.UnmappedItem: "item sold_n",
    views.Outage: "date from to",
    views.CateringRow: "date product cut pieces_n",
    views.CloseView: "date causes products thrown_n sold_n money currency filters_count drops_count",
    views.WasteRow: "name sold_n thrown_n money causes",
    views.CauseRow: "cause pieces_n",
    vat.VatView: "vat name advice text level_pct growth_pct growth_sd_pct limit_pct limit_title days_n"
    " tomorrow_frac never_frac readings_count default age_days_count filled top_up for_ever acid_n colour_n"
    " last_reading_pct oil split meter_days_n oil_days_n",
    oil_money.ChangesView: "vat changes currency change_money left_money filter_told filter_points moves",
    oil_money.HabitRow: "what days_n days money saves_money",
    oil_money.MoveInto: "into name saves_money text",
    oil_money.BillView: "days_count log_gaps uptake_money discard_money labour_money media_money"
    " disposal_money rebate_money day_money per_raw_kg_money per_raw_lb_money top_up_kg_day per_hundred_n"
    " currency carried_off_kg_day fat_in_kg_day carried_off fat_in causes",
    oil_money.SiteRow: "site place unknown",
    oil_money.SiteBill: "site place unknown per_hundred_n per_raw_kg_money day_money currency log_gaps"
    " causes",
    oil_moves.FillView: "vat name mass cartons pour swells_frac cold hot heights warning melt",
    oil_moves.OrderView: "cartons top_up_cartons change_cartons safety_cartons",
    oil_moves.RotationView: "vats moves",
    oil_moves.CarriesRow: "name carries products",
    oil_moves.MoveRow: "from into notes",
    standing.CareRow: "fryer name task title who who_words takes_min asks parts state state_words days"
    " date counter last_date last_who last_note",
    upkeep.WearRow: "fryer name figure title first last ratio_n outcome text out_in_days",
    training.PeopleView: "people due work rules skills",
    training.PersonRow: "name skills",
    training.SkillStanding: "skill title standing words expires observed_by age may rules",
    training.DueSkill: "date name title",
    training.WorkRow: "title who",
    training.SkillChoice: "key title",
    training.DrillView: "key about question simulated choices",
    training.ChoiceView: "text why right hurts",
    close.CloseDayView: "date fryers store minutes_left open_count closes",
    close.FryerNight: "key name plan plan_words why steps",
    close.StepRow: "key title hazard people asks minutes done shut who second value at",
    commissioning.CommissioningView: "fryer name plate draws plate_typed site_typed site steps points go"
    " differences tests open",
    commissioning.StepRow: "key title why who hard people figures missing done ready opens at by role note"
    " passed_over pass_name pass_reason early",
    commissioning.FigureAsked: "key title",
    commissioning.PointRow: "name outcome text",
    commissioning.TestRow: "name measured worked_out outcome word text",
    procedures.CardView: "key elsewhere title gear tools version lines steps signed",
    procedures.StepShown: "text hazard picture",
    pack.PackView: "from to place address permit operator stated zone days loads fryers readings below"
    " failing checks gaps explained patterns cases open_cases rules contractors unreported oil_limit counts"
    " entry hash checked_at checked anchor anchor_key anchor_missing made_at answer",
    pack.LoadRow: "product fryer count readings share run run_from run_to",
    pack.FailingRow: "number at load pieces read corrected limit level thermometer checked who author mark"
    " case",
    case_rows.CaseView: "number what fryer product found at closed pieces thermometer steps who author note"
    " missing earlier recooked again served_allowed reading unknown_before",
    case_rows.StepRow: "at step words who detail note author",
    case_rows.EarlierRow: "number at product pieces decision",
    case_rows.Trace: "product bought loads gaps",
    case_rows.TracedLoad: "number fryer program pieces lifted chance_frac readings",
    case_rows.TracedReading: "number core checked",
}


@pytest.mark.parametrize(("view", "names"), SHAPES.items(), ids=lambda x: getattr(x, "__name__", ""))
def test_a_program_finds_the_names_it_knows(view, names):
    """The names are written out here: a change of one is seen, and is a change for every program."""
    assert " ".join(f.name.removesuffix("_") for f in fields(view)) == names
