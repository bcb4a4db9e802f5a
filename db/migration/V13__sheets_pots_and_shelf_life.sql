-- Sheets and what is cut from them, pots and what was mixed in them, and how long things keep.

-- The size of one sheet of a supply that is measured by area.
create table supply_sheet (
    supply_id uuid not null,
    width_cm numeric(30, 14) not null,
    height_cm numeric(30, 14) not null,
    constraint supply_sheet_pk primary key (supply_id),
    constraint supply_sheet_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_sheet_size_ck check (width_cm > 0 and height_cm > 0)
);

-- What is printed on a sheet and may be cut out by its name.
create table supply_motif (
    supply_id uuid not null,
    name varchar(60) not null,
    width_cm numeric(30, 14) not null,
    height_cm numeric(30, 14) not null,
    constraint supply_motif_pk primary key (supply_id, name),
    constraint supply_motif_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_motif_size_ck check (width_cm > 0 and height_cm > 0)
);

-- What she knows of a supply from its label: how long it keeps once opened, how long a pot mixed with it keeps, and the
-- most of it that may go into paint, as a percentage of the paint's volume.
create table supply_limit (
    supply_id uuid not null,
    days_opened integer,
    days_mixed integer,
    most_percent numeric(9, 4),
    most_note varchar(200) not null,
    constraint supply_limit_pk primary key (supply_id),
    constraint supply_limit_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_limit_days_ck check (days_opened > 0 and days_mixed > 0),
    constraint supply_limit_most_ck check (most_percent > 0)
);

-- When what one document brought in was opened, and by when its label says to use it. Hints: no sum reads them.
create table lot_date (
    document_id uuid not null,
    supply_id uuid not null,
    opened_on date,
    use_by date,
    constraint lot_date_pk primary key (document_id, supply_id),
    constraint lot_date_document_fk foreign key (document_id) references document (id),
    constraint lot_date_supply_fk foreign key (supply_id) references supply (id)
);

-- How a use was cut out of its sheet: by its size, as a part of the sheet, or as one of its motifs, whose size is kept
-- as it was that day.
create table bench_cut (
    bench_entry_id uuid not null,
    line integer not null,
    kind varchar(10) not null,
    motif varchar(60) not null,
    width_cm numeric(30, 14),
    height_cm numeric(30, 14),
    how_many integer not null,
    constraint bench_cut_pk primary key (bench_entry_id, line),
    constraint bench_cut_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_cut_kind_ck check (kind in ('SIZE', 'PART', 'MOTIF')),
    constraint bench_cut_size_ck check ((kind = 'PART') = (width_cm is null) and (width_cm is null) = (height_cm is null)),
    constraint bench_cut_sides_ck check (width_cm > 0 and height_cm > 0),
    constraint bench_cut_how_many_ck check (how_many > 0)
);

-- A pot mixed at the bench, or a cup poured from an earlier pot of the same entry. Volumes in millilitres.
create table bench_pot (
    bench_entry_id uuid not null,
    pot integer not null,
    name varchar(60) not null,
    poured_from integer,
    poured numeric(30, 14) not null,
    water numeric(30, 14) not null,
    made numeric(30, 14) not null,
    rest numeric(30, 14) not null,
    kept_as uuid,
    use_by date,
    constraint bench_pot_pk primary key (bench_entry_id, pot),
    constraint bench_pot_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_pot_kept_fk foreign key (kept_as) references supply (id),
    constraint bench_pot_kept_uk unique (kept_as),
    constraint bench_pot_poured_from_ck check (poured_from < pot),
    constraint bench_pot_poured_ck check (poured >= 0 and (poured_from is null) = (poured = 0)),
    constraint bench_pot_water_ck check (water >= 0),
    constraint bench_pot_made_ck check (made > 0),
    constraint bench_pot_rest_ck check (rest >= 0 and rest <= made),
    constraint bench_pot_use_by_ck check (use_by is null or kept_as is not null)
);

-- The pieces that a pot went on, by weight.
create table bench_pot_piece (
    bench_entry_id uuid not null,
    pot integer not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint bench_pot_piece_pk primary key (bench_entry_id, pot, piece_id),
    constraint bench_pot_piece_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_pot_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint bench_pot_piece_weight_ck check (weight >= 0)
);

-- Which use of the entry is an ingredient of which pot.
create table bench_pot_use (
    bench_entry_id uuid not null,
    line integer not null,
    pot integer not null,
    constraint bench_pot_use_pk primary key (bench_entry_id, line),
    constraint bench_pot_use_entry_fk foreign key (bench_entry_id) references bench_entry (id)
);

-- The part of a use that was put aside with a pot, by weight, in the measure of bench_use_piece.
create table bench_use_pot (
    bench_entry_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    weight numeric(30, 14) not null,
    constraint bench_use_pot_pk primary key (bench_entry_id, line, supply_id),
    constraint bench_use_pot_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_use_pot_supply_fk foreign key (supply_id) references supply (id),
    constraint bench_use_pot_weight_ck check (weight > 0)
);
