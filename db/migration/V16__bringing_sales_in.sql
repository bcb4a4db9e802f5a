-- Sales brought in from a file. A saved mapping says what the columns of a file mean; it is known by the hash of the file's
-- header row. Positions of columns count from 0.
create table sales_mapping (
    id uuid not null,
    name varchar(80) not null,
    header_key varchar(64) not null,
    encoding varchar(20) not null,
    delimiter varchar(20) not null,
    lead_in integer not null,
    has_header boolean not null,
    date_form varchar(20) not null,
    number_form varchar(20) not null,
    each_row boolean not null,
    sent boolean not null,
    channel_id uuid not null,
    version bigint default 0 not null,
    constraint sales_mapping_pk primary key (id),
    constraint sales_mapping_name_uk unique (name),
    constraint sales_mapping_channel_fk foreign key (channel_id) references channel (id),
    constraint sales_mapping_lead_in_ck check (lead_in >= 0)
);

create table sales_mapping_column (
    mapping_id uuid not null,
    meaning varchar(20) not null,
    place integer not null,
    constraint sales_mapping_column_pk primary key (mapping_id, meaning),
    constraint sales_mapping_column_mapping_fk foreign key (mapping_id) references sales_mapping (id) on delete cascade,
    constraint sales_mapping_column_place_ck check (place >= 0)
);

-- A file that is being worked on: nothing of it is in the books. It is gone once it is brought in or thrown away.
create table sales_draft (
    id uuid not null,
    file_name varchar(200) not null,
    uploaded_at timestamp with time zone not null,
    encoding varchar(20) not null,
    delimiter varchar(20) not null,
    lead_in integer not null,
    has_header boolean not null,
    date_form varchar(20),
    number_form varchar(20),
    each_row boolean not null,
    sent boolean not null,
    channel_id uuid,
    constraint sales_draft_pk primary key (id),
    constraint sales_draft_channel_fk foreign key (channel_id) references channel (id)
);

create table sales_draft_column (
    draft_id uuid not null,
    meaning varchar(20) not null,
    place integer not null,
    constraint sales_draft_column_pk primary key (draft_id, meaning),
    constraint sales_draft_column_draft_fk foreign key (draft_id) references sales_draft (id) on delete cascade
);

-- The file itself, in parts, because one value of the embedded database holds a million bytes.
create table sales_draft_part (
    draft_id uuid not null,
    part integer not null,
    content bytea not null,
    constraint sales_draft_part_pk primary key (draft_id, part),
    constraint sales_draft_part_draft_fk foreign key (draft_id) references sales_draft (id) on delete cascade
);

-- What she said a row is.
create table sales_draft_row (
    draft_id uuid not null,
    row_number integer not null,
    what varchar(20) not null,
    codes varchar(400) not null,
    supply varchar(36) not null,
    content varchar(120) not null,
    constraint sales_draft_row_pk primary key (draft_id, row_number),
    constraint sales_draft_row_draft_fk foreign key (draft_id) references sales_draft (id) on delete cascade,
    constraint sales_draft_row_what_ck check (what in ('PIECES', 'SUPPLY', 'OUT'))
);

-- What a file brought in, so that it can be taken back. A sale that is removed by hand leaves its import.
create table sales_import (
    id uuid not null,
    file_name varchar(200) not null,
    channel_id uuid not null,
    brought_in_at timestamp with time zone not null,
    sales integer not null,
    undone_at timestamp with time zone,
    version bigint default 0 not null,
    constraint sales_import_pk primary key (id),
    constraint sales_import_channel_fk foreign key (channel_id) references channel (id),
    constraint sales_import_sales_ck check (sales > 0)
);

create table sales_import_sale (
    import_id uuid not null,
    sale_id uuid not null,
    constraint sales_import_sale_pk primary key (sale_id),
    constraint sales_import_sale_import_fk foreign key (import_id) references sales_import (id),
    constraint sales_import_sale_sale_fk foreign key (sale_id) references sale (id) on delete cascade
);

create index sales_import_sale_import_ix on sales_import_sale (import_id);
create index sale_order_reference_ix on sale (channel_id, order_reference);
