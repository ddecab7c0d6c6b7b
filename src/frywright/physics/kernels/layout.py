"""Row numbers of the packed arrays that the kernels share.

A *lane* is one piece class of one cook; a *cook* is one vat with its load. Arrays are
``[row, lane]`` or flat ``cell * lanes + lane``, the lane innermost, so that one instruction
works on several lanes. All quantities are per square metre of outer piece surface unless
they say otherwise.
"""

# lane parameters --------------------------------------------------------------------
(
    SHAPE,  # n in A(r) ~ r^n [-]
    RADIUS,  # a, half thickness or radius [m]
    BONE_RADIUS,  # inner radius of the meat [m], 0 without bone
    AREA,  # outer area of the whole class [m2]
    K0,  # conductivity of the meat k = K0 + K1 T + K2 T^2 [W/(m K)]
    K1,
    K2,
    C0,  # volumetric heat of the meat C = C0 + C1 T + C2 T^2 [J/(m3 K)]
    C1,
    C2,
    K_BONE,
    C_BONE,
    K_CRUST,
    C_CRUST,
    WATER,  # evaporable water of the wet core [kg/m3]
    FILM,  # water in the coating at the drop [kg/m2]
    START_TEMP,
    H_STILL,  # surface coefficient without boiling [W/(m2 K)]
    H_GAIN,  # rise per evaporation flux [J/(kg K)]
    H_CAP,  # largest coefficient [W/(m2 K)]
    H_LAG,  # time constant of the coefficient [s]
    VAPOUR_CP,  # heat capacity of the steam crossing the crust [J/(kg K)]
    COOK,  # number of the cook this lane belongs to
    BONE_CELLS,  # cells inside the bone
    CENTRE_WEIGHT,  # centre = T0 - weight (T1 - T0)
    FACE_VOLUME,  # enclosed volume at r = a [m]
    HALF_CELLS,  # crust thickness over half a crust cell
    FLOOR_VOLUME,  # enclosed volume at the deepest front the grid follows [m]
    WATER_START,  # water of film and meat at the drop [kg/m2]
    DRIP,  # largest share of the water that protein lets go [-]
    DRIP_LAG,  # [s]
    COAT,  # thickness of the coat [m]
    COAT_DRY,  # resistance of the coat when dry [m2 K/W]
    COAT_WET,  # when wet
    COAT_SOLIDS,  # heat capacity of the coat's solids [J/(m2 K)]
    STILL_REFERENCE,  # temperature difference at which H_STILL holds [K]; 0: at any
    DIFFUSIVITY,  # of vapour through dry crust and coat [m2/s]; 0: no evaporation below boiling
    N_LANE,
) = range(38)

# lane scalars with history [time level, row, lane] ------------------------------------
(
    FRONT,  # s, position of the evaporation front [m]
    FRONT_VOLUME,  # volume inside the front [m]
    FREE,  # water that meat no longer holds: coating water and drip [kg/m2]
    HELD,  # water that the wet meat holds [kg/m2]
    H_NOW,  # surface coefficient [W/(m2 K)]
    EVAPORATED,  # water given off since the drop [kg/m2]
    HEAT_IN,  # heat taken up since the drop [J/m2]
    HEAT_OUT,  # latent and sensible heat gone with steam [J/m2]
    FLUX_THEN,  # evaporation flux [kg/(m2 s)]
    FRONT_THEN,  # temperature of the evaporation plane [degC]
    COAT_STORED,  # heat taken up by the wet coat [J/m2]
    N_SCALAR,
) = range(12)

# lane work rows -------------------------------------------------------------------------
(
    G_NEW,  # BDF coefficient of the new level [1/s]
    G_OLD,
    G_OLDER,
    SOURCE_TEMP,  # oil or air temperature seen by the surface [degC]
    FRONT_TEMP,
    FLUX,  # evaporation flux, film or front [kg/(m2 s)]
    FLASH,  # evaporation flux inside the core [kg/(m2 s)]
    BALANCE_A,  # front balance: flux L = A - B T_f
    BALANCE_B,
    CORE_G,  # conductance last core cell - front [W/(m2 K)]
    CRUST_G,  # conductance front - first crust cell
    SURFACE_U,  # conductance source - outermost cell
    SURFACE_PHI,  # share of the source temperature in the surface temperature
    SURFACE_FLUX,  # heat flux into the surface [W/m2]
    CRUSTED,  # 1 where the front has left the surface
    RESTART,  # 1 where the next step is backward Euler
    SURFACE_TEMP,
    COLDEST,  # coldest meat point [degC]
    IN_AIR,  # 1 after the lift
    CORE_BETA,  # front coefficient seen from the core
    MEAT_SPAN,  # 1 / (front - bone) [1/m]
    CRUST_SPAN,  # crust conductivity / thickness [W/(m2 K)]
    RATIO,  # extrapolation of the predictor, step / last step
    KEEP,  # 1 where the step just tried is accepted
    STEAM_FLUX,  # evaporation flux that the crust rows were assembled with
    SPENT,  # 1 once the front stands at that floor: the rest boils off from there; 2 dry
    DRIPPED,  # water that protein lets go in the step just tried [kg/m2]
    RELAXED,  # share of the way to equilibrium that a step goes
    WET,  # share of the coat that is wet
    COAT_G,  # heat capacity of the wet coat times G_NEW [W/(m2 K)]
    COAT_PAST,  # known part of the heat it takes up [W/m2]
    FACE_TEMP,  # outer face of the crust, under the coat [degC]
    MEAT_SHARE,  # share of the last half cell in the path from there to the front
    VAPOUR_PATH,  # resistance of crust and dry coat to vapour [s/m]
    FLASH_FROM,  # first of the cells next to the front that boil inside
    N_WORK,
) = range(36)

# cook parameters --------------------------------------------------------------------------
(
    OIL_MASS,  # [kg]
    OIL_CP0,  # oil heat capacity cp = OIL_CP0 + OIL_CP1 T [J/(kg K)]
    OIL_CP1,
    METAL_HEAT,  # heat capacity of the vat that follows the oil [J/K]
    HEATER,  # [W] into the oil
    SWING,  # full width of the on/off band [K]
    BAND,  # proportional band [K], 0 for on/off
    LOSS_UA,  # oil to room [W/K]
    ROOM_TEMP,
    ATMOSPHERE,  # [Pa]
    HEAD_VOLUME,  # [m3]
    HEAD_TEMP_K,
    RELIEF_GAUGE,  # working pressure [Pa]
    RELIEF_SLOPE,  # [kg/(s Pa)]
    LEAK_AREA,  # C_d A [m2]
    VENT_AREA,
    BREATHER_AREA,
    LID_UA,  # steam to lid [W/K]
    LID_HEAT,  # [J/K]
    LID_ROOM_UA,  # lid to room [W/K]
    AIR_H,  # surface coefficient after the lift [W/(m2 K)]
    AIR_TEMP,
    OIL_TABLE,  # 1: oil temperature prescribed
    PRESSURE_TABLE,  # 1: absolute pressure prescribed
    MAX_STEP,
    FIRST_LANE,
    LAST_LANE,  # one past
    MAX_TSAT_STEP,
    ATMOSPHERE_BOILING,
    FIRST_STEP,  # after an upset (drop, lid) steps begin here [s],
    EARLY_STEP,  # stay below this [s]
    EARLY_SHARE,  # plus this share of the time since
    AIR_VAPOUR,  # water vapour in the room's air [kg/m3]
    AIR_TRANSFER,  # mass transfer coefficient after the lift [m/s]
    N_COOK,
) = range(35)

# cook scalars with history [time level, row, cook] -------------------------------------------
OIL_TEMP, PRESSURE, AIR_PRESSURE, LID_TEMP, HEATER_HEAT, ROOM_HEAT, N_COOK_SCALAR = range(7)

# cook control rows -------------------------------------------------------------------------------
(
    TIME,
    STEP,
    LAST_STEP,
    NEXT_STEP,
    STAGE,
    STAGE_START,
    HEATING,
    OIL_RESTART,
    DONE,
    STEPS,
    REJECTED,
    SMALLEST,
    TSAT,
    CLOSED,
    STATUS,
    CG_NEW,
    CG_OLD,
    CG_OLDER,
    OIL_GAP,
    ATTEMPTS,
    AIM,  # set point of the stage
    WANTED,  # step length before an event shortened it
    TSAT_OLD,
    KEPT,
    LID_SINCE,
    CORE_OLD,
    FORCED,  # steps kept although MOST_TRIES tries had failed
    N_CONTROL,
) = range(28)

# stage rows [row, stage, cook] -----------------------------------------------------------------------
S_DURATION, S_SET, S_LID, S_UNTIL, S_VALUE, S_ENDS_AT, N_STAGE = range(7)  # S_ENDS_AT < 0: none
LID_OPEN, LID_PRESSURE, LID_VENT, LID_REST = range(4)
UNTIL_TIME, UNTIL_OIL_ABOVE, UNTIL_CORE_ABOVE, UNTIL_GAUGE_ABOVE, UNTIL_GAUGE_BELOW = range(5)

# trace rows, per cook and per lane ---------------------------------------------------------------------
TR_TIME, TR_OIL, TR_PRESSURE, TR_HEATER, TR_STAGE, TR_LID_TEMP, TR_STEAM, N_TRACE = range(8)
(
    TL_CORE,
    TL_FRONT_TEMP,
    TL_SURFACE,
    TL_CRUST,
    TL_EVAPORATED,
    TL_H,
    TL_FILM,
    TL_HEAT,
    TL_CRUST_OUTER,  # crust temperatures at CRUST_DEPTHS, outermost first
    TL_CRUST_MIDDLE,
    TL_CRUST_INNER,
    N_LANE_TRACE,
) = range(12)
CRUST_DEPTHS = (0.25, 0.5, 0.75)  # share of the crust's thickness, from the outside
