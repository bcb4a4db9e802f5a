-- What she chose for her labels, by name: the address that their squares lead to.
create table label_setting (
    name varchar(20) not null,
    setting varchar(200) not null,
    constraint label_setting_pk primary key (name)
);

-- Her own sheets and rolls of labels, in millimetres. A roll is one label on a page of its size.
create table label_grid (
    id uuid not null,
    name varchar(60) not null,
    paper varchar(10) not null,
    grid_rows integer not null,
    grid_columns integer not null,
    left_mm numeric(9, 4) not null,
    top_mm numeric(9, 4) not null,
    width_mm numeric(9, 4) not null,
    height_mm numeric(9, 4) not null,
    across_mm numeric(9, 4) not null,
    down_mm numeric(9, 4) not null,
    version bigint not null,
    constraint label_grid_pk primary key (id),
    constraint label_grid_name_uk unique (name),
    constraint label_grid_paper_ck check (paper in ('LETTER', 'A4', 'ROLL')),
    constraint label_grid_count_ck check (grid_rows > 0 and grid_columns > 0),
    constraint label_grid_size_ck check (width_mm > 0 and height_mm > 0),
    constraint label_grid_edge_ck check (left_mm >= 0 and top_mm >= 0 and across_mm >= 0 and down_mm >= 0)
);

-- What goes along on a market day. No document: no money moves by packing; sales are recorded as sales.
create table packing_list (
    id uuid not null,
    title varchar(60) not null,
    market_day date not null,
    channel_id uuid,
    note varchar(1000) not null,
    version bigint not null,
    constraint packing_list_pk primary key (id),
    constraint packing_list_channel_fk foreign key (channel_id) references channel (id)
);

create index packing_list_day_ix on packing_list (market_day);

create table packing_piece (
    packing_list_id uuid not null,
    piece_id uuid not null,
    packed boolean not null,
    home boolean not null,
    -- Where it was before it was packed, to be put back there.
    place_before varchar(60) not null,
    constraint packing_piece_pk primary key (packing_list_id, piece_id),
    constraint packing_piece_list_fk foreign key (packing_list_id) references packing_list (id),
    constraint packing_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint packing_piece_home_ck check (packed or not home)
);

create index packing_piece_piece_ix on packing_piece (piece_id);
create index piece_place_ix on piece (place);
